package auricle.anatomy;

import java.util.Arrays;

/**
 * A cubic Bézier curve that leaves its start and meets its end at their slopes, over its arc
 * length. Handles are 0.37 of the chord, near those that make a quarter circle (0.39).
 */
final class CubicPiece implements ProfilePiece {
  private static final double HANDLE = 0.37;
  private static final int STEPS = 48;
  private final double[] out;
  private final double[] lateral;
  private final double startSlope;
  private final double[] lengths = new double[STEPS + 1];

  CubicPiece(ProfilePoint from, ProfilePoint to) {
    double handle = HANDLE * Math.hypot(to.out() - from.out(), to.lateral() - from.lateral());
    out = controls(from.out(), to.out(), handle * cos(from), handle * cos(to));
    lateral = controls(from.lateral(), to.lateral(), handle * sin(from), handle * sin(to));
    startSlope = from.slope();
    for (int i = 0; i < STEPS; i++) {
      double middle = (i + 0.5) / STEPS;
      double x = slope(out, middle);
      double y = slope(lateral, middle);
      lengths[i + 1] = lengths[i] + Math.sqrt(x * x + y * y) / STEPS;
    }
  }

  private static double cos(ProfilePoint p) {
    return Math.cos(p.slope());
  }

  private static double sin(ProfilePoint p) {
    return Math.sin(p.slope());
  }

  private static double[] controls(double from, double to, double first, double last) {
    return new double[] {from, from + first, to - last, to};
  }

  private static double value(double[] c, double t) {
    double q = 1 - t;
    return q * q * q * c[0] + 3 * q * q * t * c[1] + 3 * q * t * t * c[2] + t * t * t * c[3];
  }

  private static double slope(double[] c, double t) {
    double q = 1 - t;
    return 3 * (q * q * (c[1] - c[0]) + 2 * q * t * (c[2] - c[1]) + t * t * (c[3] - c[2]));
  }

  @Override
  public double length() {
    return lengths[STEPS];
  }

  @Override
  public ProfilePoint at(double length) {
    double t = parameter(length);
    if (length() < 1e-9) {
      return new ProfilePoint(out[0], lateral[0], startSlope);
    }
    double turn = Math.atan2(slope(lateral, t), slope(out, t)) - startSlope;
    double slope = startSlope + Math.IEEEremainder(turn, 2 * Math.PI);
    return new ProfilePoint(value(out, t), value(lateral, t), slope);
  }

  private double parameter(double length) {
    int found = Arrays.binarySearch(lengths, length);
    int i = Math.min(STEPS - 1, Math.max(0, found >= 0 ? found : -found - 2));
    double step = lengths[i + 1] - lengths[i];
    return (i + (step > 0 ? (length - lengths[i]) / step : 0)) / STEPS;
  }
}
