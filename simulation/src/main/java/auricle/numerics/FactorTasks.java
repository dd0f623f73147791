package auricle.numerics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A factorisation cut into tasks: subtrees of the tree of supernodes, which have nothing to do with
 * each other, then the supernodes above them a few columns at a time. A task needs only tasks
 * before it in the list. The list depends on the structure alone.
 */
final class FactorTasks {
  /** Share of the whole work beyond which a subtree is not one task. */
  private static final double LARGEST_SHARE = 1 / 16.0;

  private static final int BLOCK = RankUpdate.BLOCK;

  private final List<Task> tasks = new ArrayList<>();
  private final Task whole;
  private final double work;

  /**
   * Columns of some supernodes.
   *
   * @param first supernode
   * @param end one past the last supernode
   * @param from first column within a supernode
   * @param to one past the last; beyond the width: as many as there are
   */
  record Task(int first, int end, int from, int to) {}

  FactorTasks(SupernodeLayout layout, UpdateList updates) {
    int n = layout.supernodes();
    double[] own = new double[n];
    double[] subtree = new double[n];
    int[] lowest = new int[n];
    int[] parent = layout.parents();
    whole = new Task(0, n, 0, Integer.MAX_VALUE);
    for (int s = 0; s < n; s++) {
      own[s] = work(s, layout, updates);
      subtree[s] = own[s];
      lowest[s] = s;
    }
    double sum = 0;
    for (int s = 0; s < n; s++) {
      sum += own[s];
      if (parent[s] >= 0) {
        subtree[parent[s]] += subtree[s];
        lowest[parent[s]] = Math.min(lowest[parent[s]], lowest[s]);
      }
    }
    work = sum;
    List<Integer> roots = new ArrayList<>();
    for (int s = 0; s < n; s++) {
      boolean whole = subtree[s] <= LARGEST_SHARE * sum;
      if (whole && (parent[s] < 0 || subtree[parent[s]] > LARGEST_SHARE * sum)) {
        roots.add(s);
      }
    }
    // the longest first, so that all end at about the same time
    roots.sort(Comparator.comparingDouble(s -> -subtree[s]));
    roots.forEach(s -> tasks.add(new Task(lowest[s], s + 1, 0, Integer.MAX_VALUE)));
    for (int s = 0; s < n; s++) {
      for (int c = 0; subtree[s] > LARGEST_SHARE * sum && c < layout.width(s); c += BLOCK) {
        tasks.add(new Task(s, s + 1, c, c + BLOCK));
      }
    }
  }

  /** Multiplications that make supernode s. */
  private static double work(int s, SupernodeLayout layout, UpdateList updates) {
    int height = layout.rows(s).length;
    double sum = 0;
    for (int c = 0; c < layout.width(s); c++) {
      sum += (double) (c + 1) * (height - c);
    }
    for (int u = updates.first(s); u < updates.first(s + 1); u++) {
      int source = updates.source(u);
      int rows = layout.rows(source).length;
      double targets = updates.to(u) - updates.from(u);
      double mean = rows - (updates.from(u) + updates.to(u) - 1) / 2.0;
      sum += layout.width(source) * targets * mean;
    }
    return sum;
  }

  /** For so many threads. */
  List<Task> tasks(int threads) {
    return threads == 1 ? List.of(whole) : tasks;
  }

  /** Multiplications of the whole. */
  double work() {
    return work;
  }
}
