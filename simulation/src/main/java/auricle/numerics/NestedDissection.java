package auricle.numerics;

import java.util.Arrays;

/**
 * Nested dissection: a separator is ordered after the two sides it parts, and so on within each
 * side (George 1973, SIAM J. Numer. Anal. 10, 345-363). Small parts are ordered by minimum degree
 * with the separators around them counted in the degrees.
 */
final class NestedDissection {
  /** Number of nodes below which a part is not cut further. */
  private static final int LEAF = 60;

  private final WeightedGraph graph;
  private final int[] local;
  private final int[] order;
  private int last;

  private NestedDissection(WeightedGraph graph) {
    this.graph = graph;
    int n = graph.size();
    local = new int[n];
    Arrays.fill(local, -1);
    order = new int[n];
    last = n;
  }

  /** Elimination order of all nodes. */
  static int[] order(WeightedGraph graph) {
    NestedDissection dissection = new NestedDissection(graph);
    int[] all = new int[graph.size()];
    for (int v = 0; v < all.length; v++) {
      all[v] = v;
    }
    dissection.dissect(all);
    return dissection.order;
  }

  private void dissect(int[] nodes) {
    if (nodes.length <= LEAF) {
      orderLeaf(nodes);
      return;
    }
    WeightedGraph part = graph.induced(nodes, local);
    int[][] components = LevelSets.components(part);
    if (components.length > 1) {
      for (int[] component : components) {
        dissect(globalNumbers(component, nodes));
      }
      return;
    }
    byte[] side = MultilevelSplit.of(part);
    int[] first = pick(nodes, side, 0);
    int[] second = pick(nodes, side, 1);
    if (first.length == 0 || second.length == 0) {
      orderLeaf(nodes);
      return;
    }
    place(pick(nodes, side, Split.SEPARATOR));
    dissect(second);
    dissect(first);
  }

  private void place(int[] nodes) {
    last -= nodes.length;
    System.arraycopy(nodes, 0, order, last, nodes.length);
  }

  private void orderLeaf(int[] nodes) {
    int[] withHalo = withHalo(nodes);
    WeightedGraph part = graph.induced(withHalo, local);
    int[] inner = MinimumDegree.order(part, nodes.length);
    place(globalNumbers(inner, nodes));
  }

  /** The nodes, then those around them: only separators can be, all other parts are cut off. */
  private int[] withHalo(int[] nodes) {
    IntList list = new IntList();
    for (int v : nodes) {
      local[v] = 0;
      list.add(v);
    }
    for (int v : nodes) {
      for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
        int u = graph.neighbour[p];
        if (local[u] < 0) {
          local[u] = 0;
          list.add(u);
        }
      }
    }
    int[] all = list.toArray();
    for (int v : all) {
      local[v] = -1;
    }
    return all;
  }

  private static int[] pick(int[] nodes, byte[] side, int wanted) {
    IntList list = new IntList();
    for (int i = 0; i < nodes.length; i++) {
      if (side[i] == wanted) {
        list.add(nodes[i]);
      }
    }
    return list.toArray();
  }

  private static int[] globalNumbers(int[] locals, int[] nodes) {
    int[] global = new int[locals.length];
    for (int k = 0; k < global.length; k++) {
      global[k] = nodes[locals[k]];
    }
    return global;
  }
}
