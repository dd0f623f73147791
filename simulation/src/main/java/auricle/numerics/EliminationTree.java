package auricle.numerics;

import java.util.Arrays;

/**
 * Structure of the factor of a weighted graph under a given elimination order, found column by
 * column: below its diagonal a column has its own neighbours and what its children in the
 * elimination tree hand up (George and Liu 1981, section 5.2; Liu 1990, SIAM J. Matrix Anal. Appl.
 * 11, 134-172). Columns are numbered by their place in the order.
 */
final class EliminationTree {
  private final int[] order;
  private final int[] weight;
  private final int[] parent;
  private final int[][] below;
  private final int[] belowWeight;

  EliminationTree(WeightedGraph graph, int[] order) {
    int n = order.length;
    this.order = order;
    weight = new int[n];
    parent = new int[n];
    below = new int[n][];
    belowWeight = new int[n];
    int[] place = new int[n];
    for (int j = 0; j < n; j++) {
      place[order[j]] = j;
      weight[j] = graph.weight[order[j]];
    }
    build(graph, place);
  }

  private void build(WeightedGraph graph, int[] place) {
    int n = order.length;
    int[] firstChild = new int[n];
    int[] sibling = new int[n];
    int[] mark = new int[n];
    int[] rows = new int[n];
    Arrays.fill(firstChild, -1);
    Arrays.fill(mark, -1);
    for (int j = 0; j < n; j++) {
      int v = order[j];
      mark[j] = j;
      int count = 0;
      for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
        int i = place[graph.neighbour[p]];
        if (i > j) {
          mark[i] = j;
          rows[count++] = i;
        }
      }
      for (int c = firstChild[j]; c >= 0; c = sibling[c]) {
        for (int i : below[c]) {
          if (mark[i] != j) {
            mark[i] = j;
            rows[count++] = i;
          }
        }
      }
      close(j, Arrays.copyOf(rows, count));
      if (parent[j] >= 0) {
        sibling[j] = firstChild[parent[j]];
        firstChild[parent[j]] = j;
      }
    }
  }

  private void close(int j, int[] rows) {
    int least = Integer.MAX_VALUE;
    for (int i : rows) {
      least = Math.min(least, i);
      belowWeight[j] += weight[i];
    }
    below[j] = rows;
    parent[j] = rows.length == 0 ? -1 : least;
  }

  int size() {
    return order.length;
  }

  /** Node of the graph that column j stands for. */
  int node(int j) {
    return order[j];
  }

  /** Number of unknowns column j stands for. */
  int weight(int j) {
    return weight[j];
  }

  /** Parent column of j, or -1 for a root. */
  int parent(int j) {
    return parent[j];
  }

  /** Columns whose rows are nonzero below the diagonal of column j, in no order; shared. */
  int[] below(int j) {
    return below[j];
  }

  /** Number of unknowns below column j. */
  int belowWeight(int j) {
    return belowWeight[j];
  }

  /** Nonzeros of the factor, diagonal included. */
  long fill() {
    long sum = 0;
    for (int j = 0; j < size(); j++) {
      long w = weight[j];
      sum += w * belowWeight[j] + w * (w + 1) / 2;
    }
    return sum;
  }

  /** Floating-point operations of the factorisation: sum of squared column counts. */
  double work() {
    double sum = 0;
    for (int j = 0; j < size(); j++) {
      for (int k = 1; k <= weight[j]; k++) {
        double count = belowWeight[j] + k;
        sum += count * count;
      }
    }
    return sum;
  }
}
