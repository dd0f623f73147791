package auricle.numerics;

/**
 * For every supernode the earlier ones that update it, in ascending order, with the run of their
 * rows that are columns of the updated supernode. Update u has source(u) with rows from(u) to to(u)
 * - 1; those of supernode s are the updates first(s) .. first(s + 1) - 1.
 */
final class UpdateList {
  private final int[] start;
  private final int[] source;
  private final int[] from;
  private final int[] to;

  UpdateList(SupernodeLayout layout) {
    int[] supernodeOf = new int[layout.size()];
    for (int s = 0; s < layout.supernodes(); s++) {
      for (int k = 0; k < layout.width(s); k++) {
        supernodeOf[layout.firstColumn(s) + k] = s;
      }
    }
    start = new int[layout.supernodes() + 1];
    for (int s = 0; s < layout.supernodes(); s++) {
      int[] rows = layout.rows(s);
      for (int r = layout.width(s); r < rows.length; r = runEnd(rows, r, supernodeOf)) {
        start[supernodeOf[rows[r]] + 1]++;
      }
    }
    for (int s = 0; s < layout.supernodes(); s++) {
      start[s + 1] += start[s];
    }
    int count = start[layout.supernodes()];
    source = new int[count];
    from = new int[count];
    to = new int[count];
    fill(layout, supernodeOf);
  }

  private void fill(SupernodeLayout layout, int[] supernodeOf) {
    int[] next = start.clone();
    for (int s = 0; s < layout.supernodes(); s++) {
      int[] rows = layout.rows(s);
      int r = layout.width(s);
      while (r < rows.length) {
        int end = runEnd(rows, r, supernodeOf);
        int u = next[supernodeOf[rows[r]]]++;
        source[u] = s;
        from[u] = r;
        to[u] = end;
        r = end;
      }
    }
  }

  private static int runEnd(int[] rows, int from, int[] supernodeOf) {
    int end = from + 1;
    while (end < rows.length && supernodeOf[rows[end]] == supernodeOf[rows[from]]) {
      end++;
    }
    return end;
  }

  int first(int s) {
    return start[s];
  }

  int source(int u) {
    return source[u];
  }

  int from(int u) {
    return from[u];
  }

  int to(int u) {
    return to[u];
  }
}
