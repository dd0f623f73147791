package auricle.numerics;

import java.util.Arrays;

/**
 * Undirected graph without loops, both directions of every edge stored. Node weights count the
 * unknowns a node stands for, edge weights count the edges of a finer graph merged into one.
 *
 * <p>Immutable; arrays are shared and must not be changed.
 */
final class WeightedGraph {
  final int[] start;
  final int[] neighbour;
  final int[] edgeWeight;
  final int[] weight;

  WeightedGraph(int[] start, int[] neighbour, int[] edgeWeight, int[] weight) {
    this.start = start;
    this.neighbour = neighbour;
    this.edgeWeight = edgeWeight;
    this.weight = weight;
  }

  int size() {
    return weight.length;
  }

  int degree(int v) {
    return start[v + 1] - start[v];
  }

  int totalWeight() {
    int sum = 0;
    for (int w : weight) {
      sum += w;
    }
    return sum;
  }

  /**
   * The graph of the given nodes and the edges among them; node i of the result is nodes[i].
   *
   * @param local scratch of length size(), all -1 on entry and on return
   */
  WeightedGraph induced(int[] nodes, int[] local) {
    int edges = 0;
    for (int i = 0; i < nodes.length; i++) {
      local[nodes[i]] = i;
      edges += degree(nodes[i]);
    }
    int[] subStart = new int[nodes.length + 1];
    int[] subNeighbour = new int[edges];
    int[] subEdgeWeight = new int[edges];
    int[] subWeight = new int[nodes.length];
    int count = 0;
    for (int i = 0; i < nodes.length; i++) {
      int v = nodes[i];
      subWeight[i] = weight[v];
      for (int p = start[v]; p < start[v + 1]; p++) {
        if (local[neighbour[p]] >= 0) {
          subNeighbour[count] = local[neighbour[p]];
          subEdgeWeight[count++] = edgeWeight[p];
        }
      }
      subStart[i + 1] = count;
    }
    for (int v : nodes) {
      local[v] = -1;
    }
    return new WeightedGraph(
        subStart,
        Arrays.copyOf(subNeighbour, count),
        Arrays.copyOf(subEdgeWeight, count),
        subWeight);
  }
}
