package auricle.mesh;

/** Things numbered from 0 that are joined into groups (union-find with path halving). */
final class Groups {
  private final int[] parent;

  Groups(int count) {
    parent = new int[count];
    for (int i = 0; i < count; i++) {
      parent[i] = i;
    }
  }

  /** The lowest member of the group of a thing. */
  int find(int thing) {
    int i = thing;
    while (parent[i] != i) {
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
  }

  /** Joins the groups of two things. */
  void join(int a, int b) {
    int first = find(a);
    int second = find(b);
    parent[Math.max(first, second)] = Math.min(first, second);
  }
}
