package auricle.numerics;

import java.util.Arrays;

/**
 * Makes a separator smaller by moving one node at a time to the better side, also uphill for a
 * while, and going back to the best state met (Fiduccia and Mattheyses 1982, in the form for vertex
 * separators of Karypis and Kumar 1998, SIAM J. Sci. Comput. 20, 359-392, and Hendrickson and
 * Rothberg 1998). Each node moves at most once a pass.
 */
final class SplitRefinement {
  private static final int PASSES = 8;

  /** Changes of part without gain, moves and the nodes they pull along, before a pass ends. */
  private static final int PATIENCE = 480;

  private final Split split;
  private final WeightedGraph graph;
  private final int[][] gain = new int[2][];
  private final boolean[] moved;
  private final int[] front;
  private final int[] place;
  private int frontSize;
  private final IntList logNode = new IntList();
  private final IntList logFrom = new IntList();
  private double bestCost;
  private int bestLog;

  private SplitRefinement(Split split) {
    this.split = split;
    graph = split.graph;
    int n = graph.size();
    gain[0] = new int[n];
    gain[1] = new int[n];
    moved = new boolean[n];
    front = new int[n];
    place = new int[n];
  }

  /** Improves the split in place. */
  static void refine(Split split) {
    SplitRefinement refinement = new SplitRefinement(split);
    for (int pass = 0; pass < PASSES; pass++) {
      if (!refinement.pass()) {
        return;
      }
    }
  }

  private boolean pass() {
    start();
    double before = bestCost;
    while (logNode.size() - bestLog < PATIENCE && step()) {}
    for (int k = logNode.size() - 1; k >= bestLog; k--) {
      split.assign(logNode.get(k), (byte) logFrom.get(k));
    }
    return bestCost < before;
  }

  private void start() {
    Arrays.fill(moved, false);
    Arrays.fill(place, -1);
    frontSize = 0;
    logNode.clear();
    logFrom.clear();
    bestCost = split.cost();
    bestLog = 0;
    for (int v = 0; v < graph.size(); v++) {
      if (split.side[v] == Split.SEPARATOR) {
        enter(v);
      }
    }
  }

  private void enter(int v) {
    if (moved[v]) {
      return;
    }
    gain[0][v] = split.gain(v, 0);
    gain[1][v] = split.gain(v, 1);
    place[v] = frontSize;
    front[frontSize++] = v;
  }

  private void leave(int v) {
    int last = front[--frontSize];
    front[place[v]] = last;
    place[last] = place[v];
    place[v] = -1;
  }

  /** Best move there is, whether it helps or not; false if there is none. */
  private boolean step() {
    int best = -1;
    int bestTo = 0;
    int bestGain = Integer.MIN_VALUE;
    int light = split.weight[0] <= split.weight[1] ? 0 : 1;
    for (int k = 0; k < frontSize; k++) {
      int v = front[k];
      for (int s = 0; s < 2; s++) {
        int to = s == 0 ? light : 1 - light;
        if (gain[to][v] > bestGain && split.hasRoom(v, to)) {
          best = v;
          bestTo = to;
          bestGain = gain[to][v];
        }
      }
    }
    if (best < 0) {
      return false;
    }
    move(best, bestTo);
    double cost = split.cost();
    if (cost < bestCost) {
      bestCost = cost;
      bestLog = logNode.size();
    }
    return true;
  }

  private void move(int v, int to) {
    leave(v);
    moved[v] = true;
    log(v, (byte) to);
    for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
      int u = graph.neighbour[p];
      if (place[u] >= 0) {
        gain[1 - to][u] -= graph.weight[v];
      } else if (split.side[u] == 1 - to) {
        pull(u);
      }
    }
  }

  private void pull(int u) {
    int from = split.side[u];
    log(u, Split.SEPARATOR);
    for (int p = graph.start[u]; p < graph.start[u + 1]; p++) {
      int x = graph.neighbour[p];
      if (place[x] >= 0) {
        gain[1 - from][x] += graph.weight[u];
      }
    }
    enter(u);
  }

  private void log(int v, byte to) {
    logNode.add(v);
    logFrom.add(split.side[v]);
    split.assign(v, to);
  }
}
