package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.plan.Range;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.Style;
import java.awt.geom.Path2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One section on the sheet of sections: the head below, the face to the left of a right ear. */
final class SectionPanel {
  static final Pen BEFORE = new Pen(new Ink(110, 110, 110, 1), 0.3, 1);
  static final Ink BEFORE_WALL = new Ink(150, 150, 150, 0.28);
  static final Pen AFTER = new Pen(Ink.BLUE, 0.35);
  static final Ink AFTER_WALL = Ink.BLUE.withOpacity(0.45);
  static final Pen LEG = new Pen(Ink.BLACK, 0.35);
  static final Pen STAND = new Pen(Ink.BLACK, 0.2);
  static final Pen LEG_BEFORE = new Pen(Ink.GREY, 0.3, 0.6);
  static final Ink TARGET = Ink.GREEN.withOpacity(0.22);
  private static final double HATCH_MM = 2.6;

  private final Page page;
  private final EarStory story;
  private final Level level;
  private final SectionScale scale;
  private final double left;
  private final double ground;
  private final double width;

  /**
   * @param left edge of the drawing on the page
   * @param ground height on the page at which the mastoid plane lies
   * @param width of the drawing
   */
  SectionPanel(
      Page page,
      EarStory story,
      Level level,
      SectionScale scale,
      double left,
      double ground,
      double width) {
    this.page = page;
    this.story = story;
    this.level = level;
    this.scale = scale;
    this.left = left;
    this.ground = ground;
    this.width = width;
  }

  void draw() {
    Range target = story.target().helixMastoid_mm().get(level);
    if (target != null) {
      double high = Math.max(y(target.high()), ground - scale.height());
      double low = Math.max(y(target.low()), ground - scale.height());
      page.box(left, low, left + width, high, TARGET);
    }
    ground();
    wall(story.before(), BEFORE_WALL, BEFORE);
    wall(story.after(), AFTER_WALL, AFTER);
    AnglesDrawing angles = new AnglesDrawing(page, level, this::x, this::y);
    angles.draw(story.before(), LEG_BEFORE);
    angles.draw(story.after(), LEG);
    angles.label(story.after(), LEG.ink());
    angles.drawStand(story.after(), STAND);
    dimension(story.before(), BEFORE, Ink.GREY, 2);
    dimension(story.after(), AFTER, Ink.BLUE, 1);
  }

  private double x(double anterior_mm) {
    return left + scale.x(anterior_mm);
  }

  private double y(double lateral_mm) {
    return ground - scale.factor() * lateral_mm;
  }

  private void ground() {
    page.line(left, ground, left + width, ground, new Pen(Ink.BLACK, 0.5));
    Pen thin = new Pen(Ink.GREY, 0.15);
    for (double at = left + 2; at < left + width; at += 2.2) {
      page.line(at, ground + 0.4, at - 1.8, ground + HATCH_MM, thin);
    }
    Style style = Sheet.SMALL.in(Ink.GREY);
    double below = ground + HATCH_MM + 3.2;
    page.label("mastoid plane", left + width / 2, below, style.centred());
    boolean right = story.mirror() > 0;
    page.label(right ? "front" : "back", left, below, style);
    page.label(right ? "back" : "front", left + width, below, style.ending());
  }

  private void wall(Moment moment, Ink ink, Pen pen) {
    for (List<EarCut.Place> piece : pieces(moment)) {
      Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
      for (EarCut.Place p : piece) {
        to(outline, p, 1);
      }
      for (int i = piece.size() - 1; i >= 0; i--) {
        to(outline, piece.get(i), -1);
      }
      outline.closePath();
      page.area(outline, ink);
      page.line(outline, pen);
    }
  }

  private void to(Path2D path, EarCut.Place p, int face) {
    double x = x(p.anterior_mm() + face * p.halfAnterior_mm());
    double y = y(p.lateral_mm() + face * p.halfLateral_mm());
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    } else {
      path.lineTo(x, y);
    }
  }

  private List<List<EarCut.Place>> pieces(Moment moment) {
    return SectionScale.pieces(moment.shape(), level);
  }

  /** Dimension line of the distance from the mastoid plane, so many places behind the ear. */
  private void dimension(Moment moment, Pen pen, Ink ink, int place) {
    double distance = LevelFigures.distance(level).of(moment.measures());
    if (!Double.isFinite(distance)) {
      return;
    }
    double at = left + scale.behind() + story.mirror() * scale.sideStep() * place;
    Pen thin = new Pen(ink, 0.22);
    double top = y(distance);
    rim(moment, distance).ifPresent(p -> page.line(x(p.anterior_mm()), top, at, top, thin));
    page.line(at, ground, at, top, new Pen(ink, pen.width_mm()));
    arrow(at, top, -1, ink);
    arrow(at, ground, 1, ink);
    Style style = Sheet.TEXT.inBold().in(ink).centred().overLines();
    page.label(Words.number(distance), at, top - 1.4, style);
  }

  /** The place of the section that lies at the distance measured; the rearmost of several. */
  private Optional<EarCut.Place> rim(Moment moment, double distance) {
    return pieces(moment).stream()
        .flatMap(List::stream)
        .min(
            Comparator.comparingDouble(
                p -> Math.abs(p.lateral_mm() - distance) + 0.02 * p.anterior_mm()));
  }

  private void arrow(double x, double y, int up, Ink ink) {
    page.polygon(ink, x, y, x - 0.7, y - up * 2.2, x + 0.7, y - up * 2.2);
  }
}
