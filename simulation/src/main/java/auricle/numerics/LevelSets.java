package auricle.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Breadth-first search through a graph, level by level. */
final class LevelSets {
  private final WeightedGraph graph;
  private final int[] level;
  private final int[] queue;
  private int reached;

  LevelSets(WeightedGraph graph) {
    this.graph = graph;
    level = new int[graph.size()];
    queue = new int[graph.size()];
  }

  /** Visits all nodes connected to the root. */
  void from(int root) {
    Arrays.fill(level, -1);
    reached = 0;
    extend(root);
  }

  private void extend(int root) {
    visit(root, 0);
    for (int k = reached - 1; k < reached; k++) {
      int v = queue[k];
      for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
        if (level[graph.neighbour[p]] < 0) {
          visit(graph.neighbour[p], level[v] + 1);
        }
      }
    }
  }

  private void visit(int v, int levelOfV) {
    level[v] = levelOfV;
    queue[reached++] = v;
  }

  /** Number of nodes reached. */
  int reached() {
    return reached;
  }

  /** The k-th node reached. */
  int node(int k) {
    return queue[k];
  }

  /**
   * A node far from all others: the end of the longest of repeated searches, begun at the given
   * root (George and Liu 1979, ACM Trans. Math. Softw. 5, 284-295).
   */
  int pseudoPeripheral(int root) {
    from(root);
    int end = queue[reached - 1];
    int depth = level[end];
    for (int tries = 0; tries < 8; tries++) {
      from(end);
      int farther = queue[reached - 1];
      if (level[farther] <= depth) {
        return end;
      }
      depth = level[farther];
      end = farther;
    }
    return end;
  }

  /** The nodes of each connected component. */
  static int[][] components(WeightedGraph graph) {
    LevelSets levels = new LevelSets(graph);
    Arrays.fill(levels.level, -1);
    List<int[]> found = new ArrayList<>();
    for (int v = 0; v < graph.size(); v++) {
      if (levels.level[v] < 0) {
        int before = levels.reached;
        levels.extend(v);
        found.add(Arrays.copyOfRange(levels.queue, before, levels.reached));
      }
    }
    return found.toArray(new int[0][]);
  }
}
