package auricle.numerics;

/**
 * A graph cut in two sides (0 and 1) by a vertex separator (2): no edge joins the two sides. A node
 * may move from the separator to a side; its neighbours on the far side then fall to the separator.
 */
final class Split {
  static final byte SEPARATOR = 2;

  /** Share of the whole weight that a side may have. */
  private static final double LARGEST_SIDE = 0.6;

  final WeightedGraph graph;
  final byte[] side;
  final int[] weight = new int[3];
  private final int largestSide;

  /** The graph with the given sides, which the split takes over. */
  Split(WeightedGraph graph, byte[] side) {
    this.graph = graph;
    this.side = side;
    for (int v = 0; v < side.length; v++) {
      weight[side[v]] += graph.weight[v];
    }
    largestSide = (int) (LARGEST_SIDE * (weight[0] + weight[1] + weight[2]));
  }

  /** Change of the separator's weight, sign reversed, if v moved to side {@code to}. */
  int gain(int v, int to) {
    int gain = graph.weight[v];
    for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
      if (side[graph.neighbour[p]] == 1 - to) {
        gain -= graph.weight[graph.neighbour[p]];
      }
    }
    return gain;
  }

  /** Whether side {@code to} can take v, or is the lighter one anyway. */
  boolean hasRoom(int v, int to) {
    return weight[to] + graph.weight[v] <= largestSide || weight[to] < weight[1 - to];
  }

  /** Puts v to part {@code to}, whatever its neighbours. */
  void assign(int v, byte to) {
    weight[side[v]] -= graph.weight[v];
    weight[to] += graph.weight[v];
    side[v] = to;
  }

  /** Difference of the sides' weights. */
  int imbalance() {
    return Math.abs(weight[0] - weight[1]);
  }

  /** The smaller the better: separator weight, dearer the more the sides differ. */
  double cost() {
    double whole = weight[0] + weight[1] + weight[2];
    double excess = Math.max(0, Math.max(weight[0], weight[1]) - largestSide) / whole;
    return weight[SEPARATOR] * (1 + 0.5 * imbalance() / whole + 20 * excess)
        + (weight[0] == 0 || weight[1] == 0 ? whole : 0);
  }
}
