package auricle.equilibrium;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A level passed within an arc step.
 *
 * @param level what was passed
 * @param fraction about where in the step
 */
record Crossing(PathLevel level, double fraction) {
  private static final int SAMPLES = 64;

  /**
   * Levels passed from a saved state to the present one, in the order of passing. Between the two,
   * values run along the cubic that has the slopes of both tangents, so that a level passed twice
   * about a limit point is found twice.
   *
   * @param arc length of the step
   */
  static List<Crossing> of(
      double[] before,
      PathTangent from,
      TotalEnergy energy,
      PathTangent to,
      double arc,
      List<PathLevel> levels) {
    double[] after = energy.save();
    double[] ends = levels.stream().mapToDouble(level -> level.at(energy)).toArray();
    energy.restore(before);
    List<Crossing> crossings = new ArrayList<>();
    for (int k = 0; k < ends.length; k++) {
      PathLevel level = levels.get(k);
      double start = level.at(energy) - level.value();
      double startSlope = arc * level.slope(energy, from);
      double end = ends[k] - level.value();
      double endSlope = arc * level.slope(energy, to);
      double low = start;
      for (int i = 1; i <= SAMPLES; i++) {
        double high = cubic(start, startSlope, end, endSlope, i / (double) SAMPLES);
        if (low * high < 0 || (high == 0 && low != 0)) {
          crossings.add(new Crossing(level, (i - 1 + low / (low - high)) / SAMPLES));
        }
        low = high;
      }
    }
    energy.restore(after);
    crossings.sort(Comparator.comparingDouble(Crossing::fraction));
    return crossings;
  }

  /** The cubic with given values and slopes at t = 0 and t = 1. */
  static double cubic(double a, double slopeA, double b, double slopeB, double t) {
    if (t == 1) {
      return b;
    }
    double s = 1 - t;
    return s * s * ((1 + 2 * t) * a + t * slopeA) + t * t * ((1 + 2 * s) * b - s * slopeB);
  }
}
