package auricle.report.picture;

import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Style;
import org.jspecify.annotations.Nullable;

/** Figures in words beside a drawing: before, after, change, and how it stands to the target. */
final class FigureBlock {
  private static final double LINE = 4.4;
  private static final Style AFTER = Sheet.TEXT.inBold().in(Ink.BLUE);

  private final Page page;
  private final EarStory story;
  private final double y;
  private final double step;
  private double x;

  FigureBlock(Page page, EarStory story, double x, double y, double step) {
    this.page = page;
    this.story = story;
    this.x = x;
    this.y = y;
    this.step = step;
  }

  /** Adds a figure to the right of the ones that are there. */
  void add(String head, Figure figure, @Nullable Range target) {
    double before = figure.of(story.before().measures());
    double after = figure.of(story.after().measures());
    page.label(head, x, y, Sheet.SMALL.inBold());
    double second = y + LINE + 0.6;
    Style grey = Sheet.TEXT.in(Ink.GREY);
    String from = Words.number(before) + " → ";
    page.label(from, x, second, grey);
    double next = x + Page.width_mm(from, grey);
    page.label(Words.number(after), next, second, AFTER);
    next += Page.width_mm(Words.number(after) + "  ", AFTER);
    page.label("(" + Words.change(after - before) + ")", next, second, Sheet.TEXT);
    if (target != null) {
      target(target, after, second + LINE);
    }
    x += step;
  }

  private void target(Range target, double after, double third) {
    String range = "target " + Words.range(target.low(), target.high());
    double beyond = target.beyond(after);
    if (!Double.isFinite(beyond)) {
      page.label(range, x, third, Sheet.SMALL);
      return;
    }
    String distance = Words.number(Math.abs(beyond));
    boolean met = beyond == 0;
    String verdict = met ? "met" : distance + (beyond > 0 ? " above" : " below");
    Ink ink = met ? Ink.GREEN : Ink.VERMILION;
    page.label(range + ": ", x, third, Sheet.SMALL);
    double next = x + Page.width_mm(range + ": ", Sheet.SMALL);
    page.label(verdict, next, third, Sheet.SMALL.inBold().in(ink));
  }
}
