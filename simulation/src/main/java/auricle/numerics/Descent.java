package auricle.numerics;

/**
 * The monotone way on from a point: shorter steps along a descent direction until the value has
 * fallen enough (Armijo's rule with quadratic interpolation; Nocedal and Wright 2006, section 3.5).
 */
final class Descent {
  private static final double ENOUGH = 1e-4;
  private static final double SHORTEST = 1e-10;

  private final SmoothFunction function;
  private final double[] trial;

  Descent(SmoothFunction function) {
    this.function = function;
    trial = new double[function.size()];
  }

  /** Whether a value is low enough after t of a step with the given slope (negative). */
  static boolean enough(double before, double slope, double t, double after) {
    return after <= before + ENOUGH * t * slope && after < before;
  }

  /**
   * Fraction of the direction that lowers the value enough, or 0 if there is none.
   *
   * @param from start; the function is in its state
   * @param slope derivative along the direction, negative
   * @param tried a fraction known to be too long, 0 if none is known
   * @param found value there
   * @param most largest fraction allowed
   */
  double fraction(
      Point from, double[] direction, double slope, double tried, double found, double most) {
    double t = tried > 0 ? shorter(from.value(), slope, tried, found) : most;
    while (t > SHORTEST) {
      Dense.along(from.x(), t, direction, trial);
      double value = function.value(trial);
      if (enough(from.value(), slope, t, value)) {
        return t;
      }
      t = shorter(from.value(), slope, t, value);
    }
    return 0;
  }

  private static double shorter(double before, double slope, double t, double value) {
    double bend = value - before - slope * t;
    double best = -slope * t * t / (2 * bend);
    return Double.isFinite(best) ? Math.min(Math.max(best, 0.1 * t), 0.5 * t) : 0.2 * t;
  }

  /**
   * Length along a direction of negative curvature: doubled from a small start as long as the value
   * falls; 0 if it does not fall at all.
   */
  double escape(Point from, double[] direction, double small, double most) {
    double best = 0;
    double lowest = from.value();
    for (double t = small; t <= most; t *= 2) {
      Dense.along(from.x(), t, direction, trial);
      double value = function.value(trial);
      if (!(value < lowest)) {
        break;
      }
      lowest = value;
      best = t;
    }
    return best;
  }
}
