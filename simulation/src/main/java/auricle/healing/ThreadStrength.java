package auricle.healing;

import java.util.function.DoubleUnaryOperator;

/**
 * What a thread bears before it lets go.
 *
 * @param knotPull_n knot-pull strength when new, N
 * @param left share of it that is left after so many days
 * @param tearThrough_n tension at which a bite tears out of the tissue, N
 */
public record ThreadStrength(double knotPull_n, DoubleUnaryOperator left, double tearThrough_n) {
  /** Knot-pull strength left at a time, s; N. */
  public double knotPull_n(double time_s) {
    return knotPull_n * left.applyAsDouble(time_s / Durations.DAY_S);
  }

  /** The lower of what the knot and the bite bear at a time, s; N. */
  public double bears_n(double time_s) {
    return Math.min(knotPull_n(time_s), tearThrough_n);
  }

  /** What happens at a tension beyond that, in words. */
  String words(double tension_n, double time_s) {
    return knotPull_n(time_s) <= tearThrough_n
        ? "it pulls at %.2f N, more than the %.2f N that thread and knot bear: it lets go"
            .formatted(tension_n, knotPull_n(time_s))
        : "it pulls at %.2f N, more than the %.2f N that its bite bears: it tears out"
            .formatted(tension_n, tearThrough_n);
  }
}
