package auricle.report.picture;

import auricle.assessment.Balance;
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
      target(new Balance(figure, before, after, target), second + LINE);
    }
    x += step;
  }

  private void target(Balance balance, double third) {
    Range target = balance.target();
    String range = Words.range(target.low(), target.high());
    if (!Double.isFinite(balance.beyond())) {
      page.label("target " + range, x, third, Sheet.SMALL);
      return;
    }
    Ink ink = balance.metAsShown() ? Ink.GREEN : Ink.VERMILION;
    page.label(range + ": ", x, third, Sheet.SMALL);
    double next = x + Page.width_mm(range + ": ", Sheet.SMALL);
    page.label(balance.words(), next, third, Sheet.SMALL.inBold().in(ink));
  }
}
