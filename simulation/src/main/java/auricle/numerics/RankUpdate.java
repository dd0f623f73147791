package auricle.numerics;

/**
 * Symmetric update W -= L D Lᵀ, lower triangle, with the columns of one supernode as L.
 *
 * <p>Sources are taken in blocks that stay in the nearest caches while all targets of a block are
 * served.
 */
final class RankUpdate {
  /** Columns in a block, of sources as of targets; a multiple of five and of four. */
  static final int BLOCK = 20;

  private RankUpdate() {}

  /**
   * Updates the target of each row c in firstRow .. endRow - 1, on rows c .. rows - 1.
   *
   * @param target target of row c at c - targetShift
   * @param targetShift number of the row whose target is target[0]
   * @param source columns of the factor
   * @param firstSource first source column in {@code source}, also its place in {@code d}
   * @param endSource one past the last source column
   * @param d pivots
   */
  static void subtract(
      double[][] target,
      int targetShift,
      int firstRow,
      int endRow,
      double[][] source,
      double[] d,
      int firstSource,
      int endSource,
      int rows) {
    for (int k = firstSource; k < endSource; k += BLOCK) {
      int end = Math.min(k + BLOCK, endSource);
      for (int c = firstRow; c < endRow; c++) {
        subtractColumn(target[c - targetShift], c, source, d, k, end, rows);
      }
    }
  }

  /** target -= sum over k of source[k] d[k] source[k][c], on rows c .. rows - 1. */
  static void subtractColumn(
      double[] target, int c, double[][] source, double[] d, int first, int end, int rows) {
    int k = first;
    for (; k + 4 < end && k + 8 != end; k += 5) {
      subtractFive(target, c, source, d, k, rows);
    }
    for (; k + 3 < end; k += 4) {
      subtractFour(target, c, source, d, k, rows);
    }
    if (k + 1 < end) {
      double[] x0 = source[k];
      double[] x1 = source[k + 1];
      ColumnKernels.subtract(target, x0, x1, x0[c] * d[k], x1[c] * d[k + 1], c, rows);
      k += 2;
    }
    if (k < end) {
      ColumnKernels.subtract(target, source[k], source[k][c] * d[k], c, rows);
    }
  }

  private static void subtractFive(
      double[] target, int c, double[][] source, double[] d, int k, int rows) {
    double[] x0 = source[k];
    double[] x1 = source[k + 1];
    double[] x2 = source[k + 2];
    double[] x3 = source[k + 3];
    double[] x4 = source[k + 4];
    double b0 = x0[c] * d[k];
    double b1 = x1[c] * d[k + 1];
    double b2 = x2[c] * d[k + 2];
    double b3 = x3[c] * d[k + 3];
    double b4 = x4[c] * d[k + 4];
    ColumnKernels.subtract(target, x0, x1, x2, x3, x4, b0, b1, b2, b3, b4, c, rows);
  }

  private static void subtractFour(
      double[] target, int c, double[][] source, double[] d, int k, int rows) {
    double[] x0 = source[k];
    double[] x1 = source[k + 1];
    double[] x2 = source[k + 2];
    double[] x3 = source[k + 3];
    double b0 = x0[c] * d[k];
    double b1 = x1[c] * d[k + 1];
    double b2 = x2[c] * d[k + 2];
    double b3 = x3[c] * d[k + 3];
    ColumnKernels.subtract(target, x0, x1, x2, x3, b0, b1, b2, b3, c, rows);
  }
}
