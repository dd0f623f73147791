package auricle.report;

import auricle.report.drawing.Ink;
import auricle.report.drawing.Page;
import auricle.report.drawing.Pen;
import auricle.report.drawing.PngPicture;
import auricle.report.drawing.Style;
import auricle.report.drawing.SvgPicture;
import java.io.IOException;

/**
 * Loads fonts and drawing classes ahead, beside the solving: it takes longer than drawing itself,
 * and the pictures are wanted only at the end.
 */
public final class PictureStart {
  private PictureStart() {}

  /** Begins to load on a thread of its own and returns at once. */
  public static void begin() {
    Thread thread = new Thread(PictureStart::load, "pictures");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    thread.start();
  }

  private static void load() {
    Page page = new Page("", 20, 10);
    page.line(1, 1, 9, 9, new Pen(Ink.BLUE, 0.3, 1));
    page.box(1, 1, 5, 5, Ink.GREEN.withOpacity(0.5));
    page.label("Ag", 2, 5, Style.of(3).overLines());
    page.label("Ag", 10, 5, Style.of(3).inBold());
    try {
      PngPicture.write(page, 50);
      SvgPicture.write(page, "");
    } catch (IOException e) {
      // told when the pictures themselves are drawn
    }
  }
}
