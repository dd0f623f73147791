package auricle.report.picture;

import auricle.measurement.Figure;
import auricle.measurement.HelicalShow;
import auricle.plan.Range;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * How far the helix stands beyond the antihelix as seen from the front, along the height of the
 * ear; left of the zero line the antihelix hides it.
 */
final class ShowChart {
  private static final double WIDTH = 62;

  private final Page page;
  private final EarStory story;
  private final double left;
  private final double top;
  private final double bottom;
  private final Axis axis;

  /**
   * @param left edge of the chart on the page
   * @param top height on the page of the top of the helix
   * @param bottom height on the page of the lowest point of the lobule
   */
  ShowChart(Page page, EarStory story, double left, double top, double bottom) {
    this.page = page;
    this.story = story;
    this.left = left;
    this.top = top;
    this.bottom = bottom;
    this.axis = Axis.around(-4, 6, values(story), left, left + WIDTH);
  }

  private static List<Double> values(EarStory story) {
    return java.util.stream.Stream.of(story.before(), story.after())
        .flatMap(m -> m.measures().showAlongHeight().stream())
        .map(HelicalShow::show_mm)
        .toList();
  }

  void draw() {
    page.label("Helix beyond antihelix", left, 39, Sheet.TEXT.inBold());
    page.label("from the front, along the height", left, 43, Sheet.SMALL.in(Ink.GREY));
    Range target = story.target().helicalShow_mm();
    double half = y(50);
    page.box(axis.at(target.low()), top, axis.at(target.high()), half, SectionPanel.TARGET);
    axes();
    page.line(line(story.before()), new Pen(SectionPanel.BEFORE.ink(), 0.5, 1.2));
    hidden();
    page.line(line(story.after()), new Pen(Ink.BLUE, 0.8));
    words();
  }

  private double y(double level_percent) {
    return bottom + level_percent / 100 * (top - bottom);
  }

  private void axes() {
    Pen grid = new Pen(Ink.PALE, 0.2);
    for (double tick : axis.ticks()) {
      page.line(axis.at(tick), top, axis.at(tick), bottom, grid);
      String text = Words.change(tick).replace(".0", "");
      page.label(text, axis.at(tick), bottom + 4, Sheet.SMALL.in(Ink.GREY).centred());
    }
    page.line(axis.at(0), top - 2, axis.at(0), bottom, new Pen(Ink.BLACK, 0.4));
    for (int percent = 0; percent <= 100; percent += 25) {
      page.line(left, y(percent), left + WIDTH, y(percent), grid);
      page.label(percent + " %", left - 1.5, y(percent) + 1, Sheet.SMALL.in(Ink.GREY).ending());
    }
    double below = bottom + 8.2;
    page.label("mm; − hidden behind the antihelix, + seen", left, below, Sheet.SMALL.in(Ink.GREY));
  }

  private Path2D line(Moment moment) {
    Path2D path = new Path2D.Double();
    boolean drawing = false;
    for (HelicalShow show : moment.measures().showAlongHeight()) {
      double x = axis.at(show.show_mm());
      if (!Double.isFinite(x)) {
        drawing = false;
      } else if (drawing) {
        path.lineTo(x, y(show.level_percent()));
      } else {
        path.moveTo(x, y(show.level_percent()));
        drawing = true;
      }
    }
    return path;
  }

  /** Thick bars at the zero line over the heights at which the helix is hidden. */
  private void hidden() {
    List<HelicalShow> shows = story.after().measures().showAlongHeight();
    for (int i = 1; i < shows.size(); i++) {
      if (shows.get(i - 1).show_mm() < 0 && shows.get(i).show_mm() < 0) {
        double from = y(shows.get(i - 1).level_percent());
        double to = y(shows.get(i).level_percent());
        page.box(axis.at(0) - 1.6, from, axis.at(0), to, Ink.VERMILION);
      }
    }
  }

  private void words() {
    double hidden = Figure.HIDDEN_HELIX_LENGTH.of(story.after().measures());
    double before = Figure.HIDDEN_HELIX_LENGTH.of(story.before().measures());
    Ink ink = hidden > 0.05 ? Ink.VERMILION : Ink.BLACK;
    String text = "Hidden helix: before " + Words.number(before) + " mm, after ";
    page.label(
        text + Words.number(hidden) + " mm", left, bottom + 13.5, Sheet.SMALL.inBold().in(ink));
  }
}
