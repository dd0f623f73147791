package auricle.numerics;

import java.util.Arrays;

/**
 * One step of heavy-edge matching: every node is merged with the free neighbour it is tied to most,
 * light nodes first (Karypis and Kumar 1998, SIAM J. Sci. Comput. 20, 359-392, section 3.1).
 */
final class Coarsening {
  private final WeightedGraph fine;
  private final int[] coarseOf;
  private final WeightedGraph coarse;

  Coarsening(WeightedGraph fine) {
    this.fine = fine;
    coarseOf = new int[fine.size()];
    Arrays.fill(coarseOf, -1);
    coarse = contract(match());
  }

  WeightedGraph coarse() {
    return coarse;
  }

  /** Sides of the fine nodes, given those of the coarse ones. */
  byte[] project(byte[] coarseSide) {
    byte[] side = new byte[fine.size()];
    for (int v = 0; v < side.length; v++) {
      side[v] = coarseSide[coarseOf[v]];
    }
    return side;
  }

  /** First and second fine node of each coarse node; the second is -1 for an unmatched node. */
  private int[] match() {
    int[] pairs = new int[2 * fine.size()];
    int heaviest = 1 + 3 * fine.totalWeight() / (2 * Math.max(1, MultilevelSplit.COARSEST));
    int count = 0;
    for (int v : nodesByDegree()) {
      if (coarseOf[v] >= 0) {
        continue;
      }
      int mate = mate(v, heaviest);
      coarseOf[v] = count;
      if (mate >= 0) {
        coarseOf[mate] = count;
      }
      pairs[2 * count] = v;
      pairs[2 * count + 1] = mate;
      count++;
    }
    return Arrays.copyOf(pairs, 2 * count);
  }

  private int mate(int v, int heaviest) {
    int best = -1;
    int bestTie = 0;
    for (int p = fine.start[v]; p < fine.start[v + 1]; p++) {
      int u = fine.neighbour[p];
      boolean allowed = coarseOf[u] < 0 && fine.weight[u] + fine.weight[v] <= heaviest;
      if (allowed && (best < 0 || fine.edgeWeight[p] > bestTie)) {
        best = u;
        bestTie = fine.edgeWeight[p];
      }
    }
    return best;
  }

  private int[] nodesByDegree() {
    long[] keyed = new long[fine.size()];
    for (int v = 0; v < keyed.length; v++) {
      keyed[v] = ((long) fine.degree(v) << 32) | v;
    }
    Arrays.sort(keyed);
    int[] order = new int[keyed.length];
    for (int k = 0; k < order.length; k++) {
      order[k] = (int) keyed[k];
    }
    return order;
  }

  private WeightedGraph contract(int[] pairs) {
    int n = pairs.length / 2;
    int[] start = new int[n + 1];
    int[] neighbour = new int[fine.neighbour.length];
    int[] edgeWeight = new int[fine.neighbour.length];
    int[] weight = new int[n];
    int[] slot = new int[n];
    Arrays.fill(slot, -1);
    int count = 0;
    for (int c = 0; c < n; c++) {
      start[c] = count;
      for (int k = 0; k < 2 && pairs[2 * c + k] >= 0; k++) {
        int v = pairs[2 * c + k];
        weight[c] += fine.weight[v];
        for (int p = fine.start[v]; p < fine.start[v + 1]; p++) {
          int other = coarseOf[fine.neighbour[p]];
          if (other == c) {
            continue;
          }
          if (slot[other] < start[c]) {
            slot[other] = count;
            neighbour[count++] = other;
          }
          edgeWeight[slot[other]] += fine.edgeWeight[p];
        }
      }
    }
    start[n] = count;
    return new WeightedGraph(
        start, Arrays.copyOf(neighbour, count), Arrays.copyOf(edgeWeight, count), weight);
  }
}
