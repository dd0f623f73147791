package auricle.measurement;

import java.util.function.IntToDoubleFunction;

/**
 * How even a line of surface points runs: its smallest radius over some millimetres, and the places
 * at which that is a kink.
 *
 * <p>A radius belongs to three points of the line, the outer two a given length from the middle
 * one. A kink is a place at which the radius is the smallest near by and under {@link #KINK}, a
 * turn of over 40 deg within 8 mm: this project's own convention.
 */
final class EvenLine {
  /** Radius below which a bend along a line is a kink, mm; own convention. */
  static final double KINK = 6;

  private EvenLine() {}

  /**
   * Reads a line.
   *
   * @param count number of places on it
   * @param radius_mm radius at a place, mm
   * @param level_percent height of a place, percent of ear height
   */
  static Evenness of(int count, IntToDoubleFunction radius_mm, IntToDoubleFunction level_percent) {
    int sharpest = 0;
    int kinks = 0;
    for (int i = 0; i < count; i++) {
      double radius = radius_mm.applyAsDouble(i);
      sharpest = radius < radius_mm.applyAsDouble(sharpest) ? i : sharpest;
      boolean before = i == 0 || radius_mm.applyAsDouble(i - 1) > radius;
      boolean after = i == count - 1 || radius_mm.applyAsDouble(i + 1) >= radius;
      kinks += radius < KINK && before && after ? 1 : 0;
    }
    return new Evenness(
        radius_mm.applyAsDouble(sharpest), level_percent.applyAsDouble(sharpest), kinks);
  }
}
