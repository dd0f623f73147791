package auricle.report.picture;

import auricle.report.UseNotice;
import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.Style;

/** A page with what stands on every picture: title, subject, failure if any, basis, notice. */
final class Sheet {
  /** A4 across. */
  static final double WIDTH = 297;

  /** A4 across. */
  static final double HEIGHT = 210;

  /** Free edge. */
  static final double MARGIN = 12;

  /** Where the picture itself may begin. */
  static final double TOP = 33;

  /** Height that the foot needs. */
  static final double FOOT = 16;

  static final Style TITLE = Style.of(6.2).inBold();
  static final Style TEXT = Style.of(3.5);
  static final Style SMALL = Style.of(2.9);

  private Sheet() {}

  /**
   * A page with head and foot.
   *
   * @param title of the picture
   * @param height_mm of the page
   */
  static Page of(String title, Caption caption, double height_mm) {
    Page page = new Page(title + ": " + caption.subject(), WIDTH, height_mm);
    page.label(title, MARGIN, 15, TITLE);
    Style subject = TEXT.in(Ink.GREY);
    double width = WIDTH - 2 * MARGIN;
    page.label(Words.fitted(caption.subject(), subject, width), MARGIN, 21.5, subject);
    if (!caption.failure().isEmpty()) {
      failure(page, caption.failure(), width);
    }
    foot(page, caption, height_mm, width);
    return page;
  }

  private static void failure(Page page, String words, double width) {
    page.box(MARGIN, 24, MARGIN + width, 31, Ink.VERMILION);
    Style style = TEXT.inBold().in(Ink.WHITE);
    String text = "NOT IN EQUILIBRIUM, do not use these figures: " + words;
    page.label(Words.fitted(text, style, width - 6), MARGIN + 3, 28.7, style);
  }

  private static void foot(Page page, Caption caption, double height_mm, double width) {
    double top = height_mm - FOOT + 4;
    page.line(MARGIN, top, WIDTH - MARGIN, top, new Pen(Ink.PALE, 0.25));
    Style basis = SMALL.in(Ink.GREY);
    page.label(Words.fitted(caption.basis(), basis, width), MARGIN, top + 4, basis);
    Style notice = SMALL.inBold();
    page.label(Words.fitted(UseNotice.TEXT, notice, width), MARGIN, top + 8.2, notice);
  }
}
