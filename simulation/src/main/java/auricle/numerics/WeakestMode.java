package auricle.numerics;

/**
 * The lowest eigenvalue of K v = κ M v and its vector, M = diag|K|, by inverse iteration with the
 * factor of K + s M at hand. κ is a pure number: 1 is the stiffness of a single unknown, 0 a
 * mechanism, negative an instability.
 */
final class WeakestMode {
  private static final int ROUNDS = 12;

  /** Once a round changes the estimate by less than this share, it is known well enough. */
  private static final double SETTLED = 0.02;

  private final double[] vector;
  private final double eigenvalue;

  /** The mode and its eigenvalue. */
  WeakestMode(ShiftedFactor factor) {
    this(factor, Double.POSITIVE_INFINITY);
  }

  /**
   * As far as it has to be known to say whether |κ| is above a limit: every round multiplies a mode
   * with |κ| far below the limit by far more than all others, so that it would show after two.
   *
   * @param clearly an estimate of |κ| above this, many times the limit, is not made any better
   */
  WeakestMode(ShiftedFactor factor, double clearly) {
    int n = factor.matrix().pattern().size();
    vector = new double[n];
    long seed = 0x9E3779B97F4A7C15L;
    for (int i = 0; i < n; i++) {
      // a fixed irregular start, so that no symmetry hides the mode and every run is the same
      seed = seed * 6364136223846793005L + 1442695040888963407L;
      vector[i] = (0.5 + (seed >>> 11) * 0x1p-54) / Math.sqrt(factor.weight(i));
    }
    double[] image = new double[n];
    double known = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < n; i++) {
        image[i] = factor.weight(i) * vector[i];
      }
      factor.solve(image, vector);
      double size = normalise(factor);
      boolean settled = Math.abs(size - known) <= SETTLED * size;
      if (round > 0 && (settled || 1 / size > clearly)) {
        break;
      }
      known = size;
    }
    factor.matrix().multiply(vector, image);
    eigenvalue = Dense.dot(vector, image);
  }

  /** Makes vᵀ M v = 1; the length that it had, 1/|κ + s| once it is an eigenvector. */
  private double normalise(ShiftedFactor factor) {
    double sum = 0;
    for (int i = 0; i < vector.length; i++) {
      sum += factor.weight(i) * vector[i] * vector[i];
    }
    Dense.scale(1 / Math.sqrt(sum), vector);
    return Math.sqrt(sum);
  }

  /** The vector, vᵀ M v = 1; shared. */
  double[] vector() {
    return vector;
  }

  /** κ, from above. */
  double eigenvalue() {
    return eigenvalue;
  }

  /** The unknown that takes most part, weighed by M. */
  int leader(ShiftedFactor factor) {
    int leader = 0;
    double most = -1;
    for (int i = 0; i < vector.length; i++) {
      double part = factor.weight(i) * vector[i] * vector[i];
      if (part > most) {
        most = part;
        leader = i;
      }
    }
    return leader;
  }
}
