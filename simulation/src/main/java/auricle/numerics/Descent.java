package auricle.numerics;

/**
 * The monotone way on from a point: shorter steps along a descent direction until the value has
 * fallen enough (Armijo's rule with quadratic interpolation; Nocedal and Wright 2006, section 3.5).
 */
final class Descent {
  private static final double ENOUGH = 1e-4;
  private static final double SHORTEST = 1e-10;

  /**
   * A step that was tried downhill.
   *
   * @param slope derivative of the value along its direction, ≤ 0
   * @param fraction of the direction; 0: none
   * @param value found there
   */
  record Attempt(double slope, double fraction, double value) {
    static final Attempt NONE = new Attempt(0, 0, Double.POSITIVE_INFINITY);

    Attempt withValue(double found) {
      return new Attempt(slope, fraction, found);
    }
  }

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
   * A shorter fraction than one that was too long, which lowers the value enough; 0 if none does.
   */
  double shortened(Point from, double[] direction, Attempt tooLong) {
    double t = shorter(from.value(), tooLong.slope(), tooLong.fraction(), tooLong.value());
    return fraction(from, direction, tooLong.slope(), t);
  }

  /**
   * Fraction of the direction that lowers the value enough, or 0 if there is none.
   *
   * @param from start; the function is in its state
   * @param slope derivative along the direction, negative
   * @param most fraction to begin with
   */
  double fraction(Point from, double[] direction, double slope, double most) {
    double t = most;
    while (t > SHORTEST) {
      double value = at(from, t, direction);
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
   * Length along a direction of negative curvature: shortened from a first guess until the value
   * falls, then doubled as long as it falls further; 0 if it does not fall at all.
   */
  double escape(Point from, double[] direction, double guess, double most) {
    double t = Math.min(guess, most);
    while (!(at(from, t, direction) < from.value())) {
      t /= 4;
      if (t < 1e-6 * guess) {
        return 0;
      }
    }
    double lowest = at(from, t, direction);
    while (2 * t <= most && at(from, 2 * t, direction) < lowest) {
      t *= 2;
      lowest = at(from, t, direction);
    }
    return t;
  }

  private double at(Point from, double t, double[] direction) {
    Dense.along(from.x(), t, direction, trial);
    return function.value(trial);
  }
}
