package auricle.numerics;

/**
 * The innermost loops of the factorisation, on whole columns that share one row numbering. Every
 * array has its own base and all are read at the same index: this is the form in which the HotSpot
 * compiler turns the loops into vector instructions; offsets into one large array prevent it. Five
 * source columns a loop are as many as it still unrolls.
 */
final class ColumnKernels {
  private ColumnKernels() {}

  /** w -= b0 x0 + b1 x1 + b2 x2 + b3 x3 + b4 x4 on rows from .. to - 1. */
  static void subtract(
      double[] w,
      double[] x0,
      double[] x1,
      double[] x2,
      double[] x3,
      double[] x4,
      double b0,
      double b1,
      double b2,
      double b3,
      double b4,
      int from,
      int to) {
    for (int i = from; i < to; i++) {
      w[i] -= x0[i] * b0 + x1[i] * b1 + x2[i] * b2 + x3[i] * b3 + x4[i] * b4;
    }
  }

  /** w -= b0 x0 + b1 x1 + b2 x2 + b3 x3 on rows from .. to - 1. */
  static void subtract(
      double[] w,
      double[] x0,
      double[] x1,
      double[] x2,
      double[] x3,
      double b0,
      double b1,
      double b2,
      double b3,
      int from,
      int to) {
    for (int i = from; i < to; i++) {
      w[i] -= x0[i] * b0 + x1[i] * b1 + x2[i] * b2 + x3[i] * b3;
    }
  }

  /** w -= b0 x0 + b1 x1 on rows from .. to - 1. */
  static void subtract(
      double[] w, double[] x0, double[] x1, double b0, double b1, int from, int to) {
    for (int i = from; i < to; i++) {
      w[i] -= x0[i] * b0 + x1[i] * b1;
    }
  }

  /** w -= b0 x0 on rows from .. to - 1. */
  static void subtract(double[] w, double[] x0, double b0, int from, int to) {
    for (int i = from; i < to; i++) {
      w[i] -= x0[i] * b0;
    }
  }

  /** w *= factor on rows from .. to - 1. */
  static void scale(double[] w, double factor, int from, int to) {
    for (int i = from; i < to; i++) {
      w[i] *= factor;
    }
  }

  /** Adds w, rows from .. to - 1, to a column whose rows are numbered otherwise. */
  static void scatterAdd(double[] w, int[] place, double[] column, int from, int to) {
    for (int i = from; i < to; i++) {
      column[place[i]] += w[i];
    }
  }
}
