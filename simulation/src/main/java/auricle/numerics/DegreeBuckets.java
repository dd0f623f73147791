package auricle.numerics;

import java.util.Arrays;

/** Nodes kept in doubly linked lists by degree, so that one of least degree is found at once. */
final class DegreeBuckets {
  private final int[] head;
  private final int[] next;
  private final int[] previous;
  private final int[] degree;
  private int least;

  DegreeBuckets(int nodes, int largestDegree) {
    head = new int[largestDegree + 1];
    next = new int[nodes];
    previous = new int[nodes];
    degree = new int[nodes];
    Arrays.fill(head, -1);
    Arrays.fill(degree, -1);
    least = head.length;
  }

  void insert(int v, int degreeOfV) {
    int first = head[degreeOfV];
    degree[v] = degreeOfV;
    next[v] = first;
    previous[v] = -1;
    if (first >= 0) {
      previous[first] = v;
    }
    head[degreeOfV] = v;
    least = Math.min(least, degreeOfV);
  }

  /** Takes v out; nothing happens if it is in no list. */
  void remove(int v) {
    if (degree[v] < 0) {
      return;
    }
    if (previous[v] >= 0) {
      next[previous[v]] = next[v];
    } else {
      head[degree[v]] = next[v];
    }
    if (next[v] >= 0) {
      previous[next[v]] = previous[v];
    }
    degree[v] = -1;
  }

  /** Takes out and returns the node of least degree that came in last; -1 if none is left. */
  int removeLeast() {
    while (least < head.length && head[least] < 0) {
      least++;
    }
    if (least >= head.length) {
      return -1;
    }
    int v = head[least];
    remove(v);
    return v;
  }
}
