package auricle.numerics;

import java.util.Arrays;

/**
 * Minimum degree ordering with approximate external degrees on a quotient graph: element
 * absorption, mass elimination and merging of indistinguishable nodes, after Amestoy, Davis and
 * Duff 1996 (SIAM J. Matrix Anal. Appl. 17, 886-905, sections 3 to 5).
 *
 * <p>Nodes at the end of the numbering may be frozen: they count in the degrees but are not
 * ordered. Nested dissection uses that for the separators around a part.
 */
final class MinimumDegree {
  private final QuotientGraph graph;
  private final DegreeBuckets buckets;
  private final int free;
  private final int[] degree;
  private final int[] external;
  private int remaining;

  private MinimumDegree(WeightedGraph source, int free) {
    this.free = free;
    int total = source.totalWeight();
    graph = new QuotientGraph(source);
    buckets = new DegreeBuckets(source.size(), total);
    degree = new int[source.size()];
    external = new int[source.size()];
    remaining = total;
  }

  /**
   * Elimination order of the nodes 0 .. free - 1.
   *
   * @param source the graph; nodes from {@code free} on are frozen
   */
  static int[] order(WeightedGraph source, int free) {
    return new MinimumDegree(source, free).run(source);
  }

  private int[] run(WeightedGraph source) {
    int[] order = new int[free];
    int last = free;
    double dense = Math.max(16, 10 * Math.sqrt(source.size()));
    for (int v = free - 1; v >= 0; v--) {
      if (source.degree(v) > dense) {
        remaining -= graph.weight(v);
        graph.drop(v);
        order[--last] = v;
      } else {
        degree[v] = weightAround(source, v);
        buckets.insert(v, degree[v]);
      }
    }
    int count = 0;
    for (int p = buckets.removeLeast(); p >= 0; p = buckets.removeLeast()) {
      eliminate(p);
      count = graph.listMerged(p, order, count);
    }
    return order;
  }

  private static int weightAround(WeightedGraph source, int v) {
    int sum = 0;
    for (int q = source.start[v]; q < source.start[v + 1]; q++) {
      sum += source.weight[source.neighbour[q]];
    }
    return sum;
  }

  private void eliminate(int p) {
    graph.formElement(p);
    int[] members = graph.members(p);
    for (int i : members) {
      buckets.remove(i);
      external[i] = graph.update(i, p, i < free);
    }
    mergeAlike(members);
    remaining -= graph.eliminatedWeight(p);
    int elementWeight = graph.sealElement(p);
    for (int i : graph.members(p)) {
      if (i < free) {
        int others = elementWeight - graph.weight(i);
        int bound = Math.min(degree[i], external[i]) + others;
        degree[i] = Math.min(bound, remaining - graph.weight(i));
        buckets.insert(i, degree[i]);
      }
    }
  }

  private void mergeAlike(int[] members) {
    long[] keyed = new long[members.length];
    int count = 0;
    for (int i : members) {
      if (graph.alive(i)) {
        keyed[count++] = ((long) graph.hash(i) << 32) | i;
      }
    }
    Arrays.sort(keyed, 0, count);
    for (int a = 0; a < count; a++) {
      int i = (int) keyed[a];
      boolean marked = false;
      for (int b = a + 1; b < count && (keyed[b] >>> 32) == (keyed[a] >>> 32); b++) {
        int j = (int) keyed[b];
        if (!graph.alive(i) || !graph.alive(j) || (i < free) != (j < free)) {
          continue;
        }
        if (!marked) {
          graph.markLists(i);
          marked = true;
        }
        if (graph.listsMatch(i, j)) {
          graph.merge(j, i);
        }
      }
    }
  }
}
