package auricle.report.drawing;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A picture as a list of marks in mm on a sheet, x to the right and y down, from which SVG and PNG
 * are written alike. Labels lie above everything else.
 */
public final class Page {
  private final String title;
  private final double width_mm;
  private final double height_mm;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Mark.Label> labels = new ArrayList<>();

  /**
   * An empty sheet.
   *
   * @param title what the picture shows; for readers of the file, not drawn
   */
  public Page(String title, double width_mm, double height_mm) {
    this.title = title;
    this.width_mm = width_mm;
    this.height_mm = height_mm;
  }

  /** What the picture shows. */
  public String title() {
    return title;
  }

  /** Width of the sheet. */
  public double width_mm() {
    return width_mm;
  }

  /** Height of the sheet. */
  public double height_mm() {
    return height_mm;
  }

  /** What has been drawn, in order, without the labels. */
  public List<Mark> marks() {
    return Collections.unmodifiableList(marks);
  }

  /** The labels, which lie above all else. */
  public List<Mark.Label> labels() {
    return Collections.unmodifiableList(labels);
  }

  /** Draws a line along a path. */
  public void line(Shape path, Pen pen) {
    marks.add(new Mark.Line(path, pen));
  }

  /** Draws a straight line. */
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    line(new Line2D.Double(x1, y1, x2, y2), pen);
  }

  /** Fills an area. */
  public void area(Shape shape, Ink ink) {
    marks.add(new Mark.Area(shape, ink));
  }

  /** Fills a rectangle between two corners. */
  public void box(double x1, double y1, double x2, double y2, Ink ink) {
    Rectangle2D box = new Rectangle2D.Double();
    box.setFrameFromDiagonal(x1, y1, x2, y2);
    area(box, ink);
  }

  /** Lays a raster picture on the page; its upper left corner and the size of a dot are given. */
  public void raster(BufferedImage image, double x, double y, double dot_mm) {
    marks.add(new Mark.Raster(image, x, y, dot_mm));
  }

  /** Writes a label. */
  public void label(String text, double x, double y, Style style) {
    labels.add(new Mark.Label(text, x, y, style));
  }

  /** Fills a polygon; corners as x, y, x, y, … */
  public void polygon(Ink ink, double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int i = 2; i + 1 < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    path.closePath();
    area(path, ink);
  }

  /** Length of a text in mm. */
  public static double width_mm(String text, Style style) {
    return Lettering.width_mm(text, style);
  }

  /** Box around a label in mm. */
  public static Rectangle2D box(Mark.Label label) {
    return Lettering.box(label);
  }
}
