package auricle.numerics;

/** The few operations on plain vectors that iterations need. */
final class Dense {
  private Dense() {}

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  static void scale(double factor, double[] a) {
    for (int i = 0; i < a.length; i++) {
      a[i] *= factor;
    }
  }

  /** out = x + t d. */
  static void along(double[] x, double t, double[] d, double[] out) {
    for (int i = 0; i < x.length; i++) {
      out[i] = x[i] + t * d[i];
    }
  }

  static boolean finite(double[] a) {
    for (double v : a) {
      if (!Double.isFinite(v)) {
        return false;
      }
    }
    return true;
  }
}
