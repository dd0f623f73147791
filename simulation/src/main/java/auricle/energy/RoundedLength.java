package auricle.energy;

/**
 * A length r whose kink at nothing is rounded off, as a function of its square q:
 *
 * <pre>
 *   μ = r for r ≥ δ,   μ = δ (3 + 6 s − s²)/8, s = q/δ², below
 * </pre>
 *
 * <p>At δ value, slope and curvature are those of r, so that μ has two continuous derivatives; at
 * nothing it is 3 δ/8 and smooth.
 *
 * @param square q, not negative
 * @param bound δ; where it is 0 nothing is rounded off, and derivatives at nothing are not finite
 */
record RoundedLength(double square, double bound) {
  private boolean rounded() {
    return square < bound * bound;
  }

  private double share() {
    return square / (bound * bound);
  }

  /** μ. */
  double value() {
    double s = share();
    return rounded() ? bound * (3 + 6 * s - s * s) / 8 : Math.sqrt(square);
  }

  /** dμ/dq. */
  double slope() {
    return rounded() ? (3 - share()) / (4 * bound) : 1 / (2 * value());
  }

  /** d²μ/dq². */
  double bend() {
    return rounded() ? -1 / (4 * bound * bound * bound) : -1 / (4 * square * value());
  }
}
