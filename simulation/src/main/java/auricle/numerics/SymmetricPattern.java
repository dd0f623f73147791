package auricle.numerics;

import java.util.Arrays;

/**
 * Where the nonzeros of a symmetric sparse matrix stand: the lower triangle, column by column
 * (compressed columns, row indices ascending, the diagonal always first in its column).
 *
 * <p>Immutable; the arrays handed out are shared for speed and must not be changed.
 */
public final class SymmetricPattern {
  private final int size;
  private final int[] columnStart;
  private final int[] rowIndex;

  /**
   * @param size order n of the matrix
   * @param columnStart n + 1 offsets into {@code rowIndex}
   * @param rowIndex row of each stored entry, ascending within a column, first the diagonal
   * @throws IllegalArgumentException if a diagonal entry is missing or rows are not ascending
   */
  public SymmetricPattern(int size, int[] columnStart, int[] rowIndex) {
    this.size = size;
    this.columnStart = columnStart;
    this.rowIndex = rowIndex;
    for (int j = 0; j < size; j++) {
      checkColumn(j);
    }
  }

  private void checkColumn(int j) {
    int from = columnStart[j];
    if (from >= columnStart[j + 1] || rowIndex[from] != j) {
      throw new IllegalArgumentException("column " + j + " lacks its diagonal entry");
    }
    for (int p = from + 1; p < columnStart[j + 1]; p++) {
      if (rowIndex[p] <= rowIndex[p - 1] || rowIndex[p] >= size) {
        throw new IllegalArgumentException("rows of column " + j + " are not ascending");
      }
    }
  }

  /** Order of the matrix. */
  public int size() {
    return size;
  }

  /** Number of stored entries, lower triangle with diagonal. */
  public int entryCount() {
    return columnStart[size];
  }

  /** Offsets of the columns, length n + 1; shared, not to be changed. */
  public int[] columnStart() {
    return columnStart;
  }

  /** Row of each stored entry; shared, not to be changed. */
  public int[] rowIndex() {
    return rowIndex;
  }

  /**
   * Slot of entry (row, column) in the value array; either triangle may be asked for.
   *
   * @throws IllegalArgumentException if the entry is not in the pattern
   */
  public int slot(int row, int column) {
    int p = find(row, column);
    if (p < 0) {
      throw new IllegalArgumentException("no entry (" + row + ", " + column + ") in the pattern");
    }
    return p;
  }

  /** The same; negative if the entry is not in the pattern. */
  int find(int row, int column) {
    int c = Math.min(row, column);
    return Arrays.binarySearch(rowIndex, columnStart[c], columnStart[c + 1], Math.max(row, column));
  }
}
