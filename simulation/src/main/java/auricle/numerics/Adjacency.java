package auricle.numerics;

/** Neighbours of every unknown, both triangles of a pattern, without the diagonal. */
final class Adjacency {
  final int[] start;
  final int[] neighbour;

  Adjacency(SymmetricPattern pattern) {
    int n = pattern.size();
    int[] columnStart = pattern.columnStart();
    int[] row = pattern.rowIndex();
    start = new int[n + 1];
    for (int j = 0; j < n; j++) {
      for (int p = columnStart[j] + 1; p < columnStart[j + 1]; p++) {
        start[j + 1]++;
        start[row[p] + 1]++;
      }
    }
    for (int j = 0; j < n; j++) {
      start[j + 1] += start[j];
    }
    neighbour = new int[start[n]];
    int[] fill = start.clone();
    for (int j = 0; j < n; j++) {
      for (int p = columnStart[j] + 1; p < columnStart[j + 1]; p++) {
        neighbour[fill[j]++] = row[p];
        neighbour[fill[row[p]]++] = j;
      }
    }
  }

  /** Order-free hash of unknown i and its neighbours. */
  long hash(int i) {
    long sum = mix(i);
    for (int p = start[i]; p < start[i + 1]; p++) {
      sum += mix(neighbour[p]);
    }
    return sum;
  }

  /** Writes {@code tag} into mark at unknown i and its neighbours. */
  void mark(int i, int[] mark, int tag) {
    mark[i] = tag;
    for (int p = start[i]; p < start[i + 1]; p++) {
      mark[neighbour[p]] = tag;
    }
  }

  /** Whether i and j have as many neighbours and all of i's closed neighbourhood is marked. */
  boolean allMarked(int i, int j, int[] mark, int tag) {
    if (start[i + 1] - start[i] != start[j + 1] - start[j] || mark[i] != tag) {
      return false;
    }
    for (int p = start[i]; p < start[i + 1]; p++) {
      if (mark[neighbour[p]] != tag) {
        return false;
      }
    }
    return true;
  }

  /** Finaliser of Steele, Lea and Flood 2014 (SplitMix64), to spread indices over 64 bits. */
  private static long mix(int index) {
    long z = (index + 1) * 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
