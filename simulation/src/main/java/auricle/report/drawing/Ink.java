package auricle.report.drawing;

/**
 * A colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 * @param opacity 0 (clear) to 1
 */
public record Ink(int red, int green, int blue, double opacity) {
  /** Lines and words. */
  public static final Ink BLACK = new Ink(26, 26, 26, 1);

  /** Words of less weight. */
  public static final Ink GREY = new Ink(90, 90, 90, 1);

  /** Grids and rulers. */
  public static final Ink PALE = new Ink(205, 205, 205, 1);

  /** Paper. */
  public static final Ink WHITE = new Ink(255, 255, 255, 1);

  /**
   * Blue. This and the next colours are those that colour-blind readers tell apart, by M. Okabe and
   * K. Ito, "Color Universal Design" (2008); where two meet, line style or place differs too.
   */
  public static final Ink BLUE = new Ink(0, 114, 178, 1);

  /** Bluish green. */
  public static final Ink GREEN = new Ink(0, 158, 115, 1);

  /** Vermilion. */
  public static final Ink VERMILION = new Ink(213, 94, 0, 1);

  /** Reddish purple. */
  public static final Ink PURPLE = new Ink(204, 121, 167, 1);

  /** The same colour, clearer. */
  public Ink withOpacity(double share) {
    return new Ink(red, green, blue, share);
  }

  /** The colour for a raster picture. */
  java.awt.Color awt() {
    return new java.awt.Color(red, green, blue, (int) Math.round(255 * opacity));
  }
}
