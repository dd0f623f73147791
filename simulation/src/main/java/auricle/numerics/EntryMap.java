package auricle.numerics;

/** Where each stored entry of the caller's matrix goes: for every permuted column its entries. */
final class EntryMap {
  private final int[] start;
  private final int[] slot;
  private final int[] localRow;

  EntryMap(SymmetricPattern pattern, SupernodeLayout layout) {
    int n = pattern.size();
    int[] columnStart = pattern.columnStart();
    int[] row = pattern.rowIndex();
    start = new int[n + 1];
    slot = new int[pattern.entryCount()];
    localRow = new int[pattern.entryCount()];
    for (int j = 0; j < n; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        start[Math.min(layout.newOf(j), layout.newOf(row[p])) + 1]++;
      }
    }
    for (int j = 0; j < n; j++) {
      start[j + 1] += start[j];
    }
    int[] next = start.clone();
    for (int j = 0; j < n; j++) {
      for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
        int a = layout.newOf(j);
        int b = layout.newOf(row[p]);
        int q = next[Math.min(a, b)]++;
        slot[q] = p;
        localRow[q] = Math.max(a, b);
      }
    }
    makeLocal(layout);
  }

  private void makeLocal(SupernodeLayout layout) {
    int[] local = new int[layout.size()];
    for (int s = 0; s < layout.supernodes(); s++) {
      int[] rows = layout.rows(s);
      for (int i = 0; i < rows.length; i++) {
        local[rows[i]] = i;
      }
      int first = layout.firstColumn(s);
      for (int q = start[first]; q < start[first + layout.width(s)]; q++) {
        localRow[q] = local[localRow[q]];
      }
    }
  }

  /**
   * Adds the entries of permuted column j to its dense column.
   *
   * @return the largest magnitude among them; NaN if one is NaN
   */
  double scatter(int j, double[] values, double[] column) {
    double largest = 0;
    for (int q = start[j]; q < start[j + 1]; q++) {
      double a = values[slot[q]];
      column[localRow[q]] = a;
      largest = Math.max(largest, Math.abs(a));
    }
    return largest;
  }
}
