package auricle.numerics;

import java.util.Arrays;

/**
 * Finds a small balanced vertex separator of a connected graph: coarsen, cut the coarsest graph by
 * growing a side from several roots, then refine at every level on the way back (Karypis and Kumar
 * 1998, SIAM J. Sci. Comput. 20, 359-392).
 */
final class MultilevelSplit {
  /** Number of nodes below which a graph is cut directly. */
  static final int COARSEST = 80;

  private static final int ROOTS = 8;

  private MultilevelSplit() {}

  /** Side of every node: 0, 1, or {@link Split#SEPARATOR}. */
  static byte[] of(WeightedGraph graph) {
    return split(graph).side;
  }

  private static Split split(WeightedGraph graph) {
    if (graph.size() > COARSEST) {
      Coarsening step = new Coarsening(graph);
      if (step.coarse().size() < 0.9 * graph.size()) {
        Split split = new Split(graph, step.project(split(step.coarse()).side));
        SplitRefinement.refine(split);
        return split;
      }
    }
    return direct(graph);
  }

  private static Split direct(WeightedGraph graph) {
    LevelSets levels = new LevelSets(graph);
    int end = levels.pseudoPeripheral(0);
    Split best = grown(graph, levels, end);
    for (int k = 1; k < ROOTS; k++) {
      levels.from(end);
      int root = levels.node((int) ((long) k * (levels.reached() - 1) / (ROOTS - 1)));
      Split other = grown(graph, levels, root);
      if (other.cost() < best.cost()) {
        best = other;
      }
    }
    return best;
  }

  /** Side 0 is what a search from the root meets first, up to half of the weight. */
  private static Split grown(WeightedGraph graph, LevelSets levels, int root) {
    levels.from(root);
    byte[] side = new byte[graph.size()];
    Arrays.fill(side, (byte) 1);
    int half = graph.totalWeight() / 2;
    int grown = 0;
    for (int k = 0; k < levels.reached() && grown < half; k++) {
      side[levels.node(k)] = 0;
      grown += graph.weight[levels.node(k)];
    }
    for (int v = 0; v < side.length; v++) {
      if (side[v] == 1 && touches(graph, side, v)) {
        side[v] = Split.SEPARATOR;
      }
    }
    Split split = new Split(graph, side);
    SplitRefinement.refine(split);
    return split;
  }

  private static boolean touches(WeightedGraph graph, byte[] side, int v) {
    for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
      if (side[graph.neighbour[p]] == 0) {
        return true;
      }
    }
    return false;
  }
}
