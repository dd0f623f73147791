package auricle.numerics;

import java.util.Arrays;

/**
 * Values on a {@link SymmetricPattern}: entry p of {@link #values()} belongs to entry p of the
 * pattern.
 */
public final class SymmetricMatrix {
  private final SymmetricPattern pattern;
  private final double[] values;

  /** A zero matrix on the given pattern. */
  public SymmetricMatrix(SymmetricPattern pattern) {
    this.pattern = pattern;
    this.values = new double[pattern.entryCount()];
  }

  /** The pattern this matrix is stored on. */
  public SymmetricPattern pattern() {
    return pattern;
  }

  /** The stored values themselves, to be filled in place. */
  public double[] values() {
    return values;
  }

  /** Sets every entry to zero. */
  public void clear() {
    Arrays.fill(values, 0);
  }

  /** Diagonal entry j. */
  public double diagonal(int j) {
    return values[pattern.columnStart()[j]];
  }

  /** Adds to diagonal entry j. */
  public void addToDiagonal(int j, double amount) {
    values[pattern.columnStart()[j]] += amount;
  }

  /** y = A x, both of length n; x and y must be different arrays. */
  public void multiply(double[] x, double[] y) {
    int[] start = pattern.columnStart();
    int[] row = pattern.rowIndex();
    Arrays.fill(y, 0, pattern.size(), 0);
    for (int j = 0; j < pattern.size(); j++) {
      double xj = x[j];
      double sum = values[start[j]] * xj;
      for (int p = start[j] + 1; p < start[j + 1]; p++) {
        y[row[p]] += values[p] * xj;
        sum += values[p] * x[row[p]];
      }
      y[j] += sum;
    }
  }
}
