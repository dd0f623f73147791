package auricle.numerics;

/** Forward, diagonal and backward substitution with the supernodal factor. */
final class TriangularSolve {
  private final SupernodeLayout layout;
  private final double[][] column;
  private final double[] pivot;
  private final double[] y;
  private final double[] local;

  TriangularSolve(SupernodeLayout layout, double[][] column, double[] pivot, int longest) {
    this.layout = layout;
    this.column = column;
    this.pivot = pivot;
    y = new double[layout.size()];
    local = new double[longest];
  }

  void solve(double[] b, double[] x) {
    for (int i = 0; i < y.length; i++) {
      y[i] = b[layout.oldOf(i)];
    }
    for (int s = 0; s < layout.supernodes(); s++) {
      forward(s, layout.rows(s));
    }
    for (int i = 0; i < y.length; i++) {
      y[i] /= pivot[i];
    }
    for (int s = layout.supernodes() - 1; s >= 0; s--) {
      backward(s, layout.rows(s));
    }
    for (int i = 0; i < y.length; i++) {
      x[layout.oldOf(i)] = y[i];
    }
  }

  private void forward(int s, int[] rows) {
    gather(rows);
    int first = layout.firstColumn(s);
    int width = layout.width(s);
    int c = 0;
    for (; c + 4 <= width; c += 4) {
      forwardFour(first + c, c, rows.length);
    }
    for (; c < width; c++) {
      ColumnKernels.subtract(local, column[first + c], local[c], c + 1, rows.length);
    }
    for (int i = 0; i < rows.length; i++) {
      y[rows[i]] = local[i];
    }
  }

  private void forwardFour(int j, int c, int height) {
    double[] x0 = column[j];
    double[] x1 = column[j + 1];
    double[] x2 = column[j + 2];
    double[] x3 = column[j + 3];
    double b0 = local[c];
    double b1 = local[c + 1] - x0[c + 1] * b0;
    double b2 = local[c + 2] - x0[c + 2] * b0 - x1[c + 2] * b1;
    double b3 = local[c + 3] - x0[c + 3] * b0 - x1[c + 3] * b1 - x2[c + 3] * b2;
    local[c + 1] = b1;
    local[c + 2] = b2;
    local[c + 3] = b3;
    ColumnKernels.subtract(local, x0, x1, x2, x3, b0, b1, b2, b3, c + 4, height);
  }

  private void backward(int s, int[] rows) {
    gather(rows);
    int first = layout.firstColumn(s);
    int c = layout.width(s);
    for (; c % 4 != 0; c--) {
      backwardOne(first + c - 1, c - 1, rows.length);
    }
    for (; c > 0; c -= 4) {
      backwardFour(first + c - 4, c - 4, rows.length);
    }
  }

  private void backwardOne(int j, int c, int height) {
    double sum = local[c];
    double[] x = column[j];
    for (int i = c + 1; i < height; i++) {
      sum -= x[i] * local[i];
    }
    local[c] = sum;
    y[j] = sum;
  }

  private void backwardFour(int j, int c, int height) {
    double[] x0 = column[j];
    double[] x1 = column[j + 1];
    double[] x2 = column[j + 2];
    double[] x3 = column[j + 3];
    double s0 = local[c];
    double s1 = local[c + 1];
    double s2 = local[c + 2];
    double s3 = local[c + 3];
    for (int i = c + 4; i < height; i++) {
      double t = local[i];
      s0 -= x0[i] * t;
      s1 -= x1[i] * t;
      s2 -= x2[i] * t;
      s3 -= x3[i] * t;
    }
    s2 -= x2[c + 3] * s3;
    s1 -= x1[c + 3] * s3 + x1[c + 2] * s2;
    s0 -= x0[c + 3] * s3 + x0[c + 2] * s2 + x0[c + 1] * s1;
    keep(j, c, s0, s1, s2, s3);
  }

  private void keep(int j, int c, double s0, double s1, double s2, double s3) {
    y[j] = s0;
    y[j + 1] = s1;
    y[j + 2] = s2;
    y[j + 3] = s3;
    local[c] = s0;
    local[c + 1] = s1;
    local[c + 2] = s2;
    local[c + 3] = s3;
  }

  private void gather(int[] rows) {
    for (int i = 0; i < rows.length; i++) {
      local[i] = y[rows[i]];
    }
  }
}
