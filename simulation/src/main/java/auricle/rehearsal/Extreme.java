package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.Level;

/**
 * The greatest value of a field over the ear.
 *
 * @param value strain (no unit) or stress (MPa)
 * @param triangle of the mesh
 * @param region key of its region
 * @param heightPercent share of the ear's height at rest, 0 lowest point of the lobule
 * @param at centre of the triangle in the present shape
 * @param words the place in words, such as "antihelix, upper third"; "nowhere" where nothing is
 *     strained
 */
public record Extreme(
    double value, int triangle, String region, double heightPercent, Position at, String words) {
  private static final double UPPER_THIRD = 200 / 3.0;
  private static final double LOWER_THIRD = 100 / 3.0;

  /** The level of the third of the ear in which it is. */
  public Level level() {
    return third(heightPercent);
  }

  /** Where a triangle lies, in words such as "antihelix, upper third". */
  static String place(Auricle auricle, int triangle) {
    String region = auricle.region(triangle).key().replace('_', ' ');
    return region + ", " + third(auricle.chart().heightPercent(triangle)).key() + " third";
  }

  /** The level of the third of the ear in which a height is, percent of the ear's height. */
  static Level third(double heightPercent) {
    return heightPercent > UPPER_THIRD
        ? Level.UPPER
        : heightPercent > LOWER_THIRD ? Level.MIDDLE : Level.LOWER;
  }
}
