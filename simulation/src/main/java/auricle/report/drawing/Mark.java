package auricle.report.drawing;

import java.awt.Shape;
import java.awt.image.BufferedImage;

/** One thing drawn on a page; lengths in mm, x to the right, y down. */
public sealed interface Mark {
  /**
   * A line.
   *
   * @param path its course
   * @param pen how it is drawn
   */
  record Line(Shape path, Pen pen) implements Mark {}

  /**
   * A filled area.
   *
   * @param shape its outline; filled where its winding number is not zero
   * @param ink its colour
   */
  record Area(Shape shape, Ink ink) implements Mark {}

  /**
   * A raster, smooth between its dots.
   *
   * @param image what it shows; may be clear in places
   * @param x of its left edge
   * @param y of its upper edge
   * @param dot_mm size of a dot
   */
  record Raster(BufferedImage image, double x, double y, double dot_mm) implements Mark {}

  /**
   * A label of one line.
   *
   * @param text what it says
   * @param x of its anchor
   * @param y of its base line at the anchor
   * @param style its lettering
   */
  record Label(String text, double x, double y, Style style) implements Mark {}
}
