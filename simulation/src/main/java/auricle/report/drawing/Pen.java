package auricle.report.drawing;

import java.awt.BasicStroke;

/**
 * How a line is drawn.
 *
 * @param ink its colour
 * @param width_mm its width
 * @param dash_mm length of a dash and of the gap after it; 0 for a full line
 */
public record Pen(Ink ink, double width_mm, double dash_mm) {
  /** A full line. */
  public Pen(Ink ink, double width_mm) {
    this(ink, width_mm, 0);
  }

  /** The stroke in mm, with round ends and corners. */
  BasicStroke stroke() {
    float width = (float) width_mm;
    if (dash_mm <= 0) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] dashes = {(float) dash_mm, (float) dash_mm};
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
  }
}
