package auricle.numerics;

/** How well forces balance at a point: the largest residual, whose it is, and what is asked for. */
final class Balance {
  private static final double ROUNDING = 32 * Math.ulp(1.0);

  private final SmoothFunction function;
  private final double residual;
  private final int worst;
  private final double scale;

  /** Of the gradient got from the last evaluation of derivatives. */
  Balance(SmoothFunction function, double[] gradient) {
    this.function = function;
    double largest = 0;
    int at = 0;
    for (int i = 0; i < gradient.length; i++) {
      double r = Math.abs(gradient[i]) / function.unit(i);
      if (!(r <= largest)) {
        largest = r;
        at = i;
      }
    }
    residual = largest;
    worst = at;
    scale = function.forceScale();
  }

  /** max |g_i| / unit_i. */
  double residual() {
    return residual;
  }

  /** The unknown that has it. */
  int worst() {
    return worst;
  }

  /** Residual allowed by a relative tolerance. */
  double tolerance(double relative) {
    return relative * scale;
  }

  /**
   * The residual that rounding of the unknowns alone can leave, 32 ulp of max_i Σ_j |K_ij x_j|: no
   * iteration can get reliably below it.
   */
  double floor(SymmetricMatrix hessian, double[] x) {
    int[] start = hessian.pattern().columnStart();
    int[] row = hessian.pattern().rowIndex();
    double[] sum = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      for (int p = start[j]; p < start[j + 1]; p++) {
        double k = Math.abs(hessian.values()[p]);
        sum[row[p]] += k * Math.abs(x[j]);
        if (row[p] != j) {
          sum[j] += k * Math.abs(x[row[p]]);
        }
      }
    }
    double largest = 0;
    for (int i = 0; i < x.length; i++) {
      largest = Math.max(largest, sum[i] / function.unit(i));
    }
    return ROUNDING * largest;
  }

  /** "largest residual 1.2e-3 at y of vertex 7, tolerance 4.0e-9". */
  String words(double tolerance) {
    return "largest residual %.3g at %s, tolerance %.3g"
        .formatted(residual, residual == 0 ? "every unknown" : function.describe(worst), tolerance);
  }

  /** Length of a step: max |d_i| unit_i. */
  static double length(SmoothFunction function, double[] step) {
    double length = 0;
    for (int i = 0; i < step.length; i++) {
      double l = Math.abs(step[i]) * function.unit(i);
      if (!(l <= length)) {
        length = l;
      }
    }
    return length;
  }
}
