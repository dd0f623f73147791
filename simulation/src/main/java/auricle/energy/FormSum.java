package auricle.energy;

import java.util.Arrays;

/**
 * A sum of quadratic forms of n variables y, each with a minimum d of its own, as one: Σ ½ s (y −
 * d)ᵀ Q (y − d) = ½ yᵀ A y − pᵀ y + c with A = Σ s Q, p = Σ s Q d, c = Σ ½ s dᵀ Q d.
 *
 * <p>Measured from a point near all minima, d is small and nothing cancels.
 */
final class FormSum {
  private final int n;
  private final double[] form;
  private final double[] pull;
  private double constant;

  FormSum(int n) {
    this.n = n;
    form = new double[n * n];
    pull = new double[n];
  }

  void clear() {
    Arrays.fill(form, 0);
    Arrays.fill(pull, 0);
    constant = 0;
  }

  /** Adds s times the form Q that starts at a place, row by row, with its minimum at d. */
  void add(double s, double[] q, int at, double[] d) {
    for (int i = 0; i < n; i++) {
      double sum = 0;
      for (int j = 0; j < n; j++) {
        double entry = s * q[at + n * i + j];
        form[n * i + j] += entry;
        sum += entry * d[j];
      }
      pull[i] += sum;
      constant += 0.5 * sum * d[i];
    }
  }

  /** A, row by row; shared. */
  double[] form() {
    return form;
  }

  /** p; shared. */
  double[] pull() {
    return pull;
  }

  /** c. */
  double constant() {
    return constant;
  }
}
