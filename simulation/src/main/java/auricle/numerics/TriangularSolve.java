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
    for (int c = 0; c < width; c++) {
      ColumnKernels.subtract(local, column[first + c], local[c], c + 1, rows.length);
    }
    for (int i = 0; i < rows.length; i++) {
      y[rows[i]] = local[i];
    }
  }

  private void backward(int s, int[] rows) {
    gather(rows);
    int first = layout.firstColumn(s);
    for (int c = layout.width(s) - 1; c >= 0; c--) {
      local[c] -= ColumnKernels.dot(column[first + c], local, c + 1, rows.length);
      y[first + c] = local[c];
    }
  }

  private void gather(int[] rows) {
    for (int i = 0; i < rows.length; i++) {
      local[i] = y[rows[i]];
    }
  }
}
