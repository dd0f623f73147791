package auricle.healing;

import java.util.function.DoubleUnaryOperator;

/**
 * ∫ r(t) y(t) dt over a step in which y goes linearly: start · y₀ + end · y₁, with start = ∫ r (1 −
 * θ) dt and end = ∫ r θ dt, θ from 0 to 1.
 *
 * @param start weight of the value at the start of the step
 * @param end weight of the value at its end
 */
record StepWeights(double start, double end) {
  private static final StepWeights NOTHING = new StepWeights(0, 0);

  /** Gauss points and weights of order 6 on −1 … 1. */
  private static final double POINT = Math.sqrt(0.6);

  private static final int MOST_PIECES = 400;

  /**
   * Integrates by Gauss points on pieces short against the time over which the rate changes.
   *
   * @param rate r(t), a second
   * @param scale_s time over which r changes noticeably, s
   */
  static StepWeights of(DoubleUnaryOperator rate, double from_s, double to_s, double scale_s) {
    double length = to_s - from_s;
    if (!(length > 0)) {
      return NOTHING;
    }
    int pieces = (int) Math.min(MOST_PIECES, 1 + Math.floor(2 * length / scale_s));
    double half = length / pieces / 2;
    double end = 0;
    double all = 0;
    for (int i = 0; i < pieces; i++) {
      double middle = from_s + (2 * i + 1) * half;
      for (int g = -1; g <= 1; g++) {
        double t = middle + g * POINT * half;
        double part = rate.applyAsDouble(t) * half * (g == 0 ? 8.0 : 5.0) / 9;
        all += part;
        end += part * (t - from_s) / length;
      }
    }
    return new StepWeights(all - end, end);
  }

  /** The same shared out so that both come to a sum that is known exactly. */
  StepWeights summingTo(double sum) {
    double all = start + end;
    return all > 0 ? new StepWeights(start * sum / all, end * sum / all) : this;
  }

  /**
   * The same with part of the start's weight put to the end, so that a value that decays by exp(−x)
   * over the step is integrated exactly, however long the step (exponentially fitted θ: Liniger and
   * Willoughby 1970, SIAM J Numer Anal 7:47-66): θ = 1/(1 − exp(−x)) − 1/x, from ½ for short steps
   * to 1 for long ones.
   */
  StepWeights fitted(double x) {
    double theta = x > 1e-3 ? 1 / -Math.expm1(-x) - 1 / x : 0.5 + x / 12;
    double moved = start * (2 * theta - 1);
    return new StepWeights(start - moved, end + moved);
  }
}
