package auricle.numerics;

import java.util.Arrays;

/**
 * The factor's structure in unknowns: the permutation, the supernodes (runs of permuted columns
 * with one row list each).
 */
final class SupernodeLayout {
  private final int size;
  private final int[] oldOf;
  private final int[] newOf;
  private final int[] firstColumn;
  private final int[][] rows;

  SupernodeLayout(UnknownGroups groups, EliminationTree tree) {
    SupernodeTree supernodes = new SupernodeTree(tree);
    int[] last = supernodes.postorder();
    size = groups.unknowns();
    oldOf = new int[size];
    newOf = new int[size];
    firstColumn = new int[last.length + 1];
    rows = new int[last.length][];
    int[] columnPlace = new int[tree.size()];
    number(groups, tree, supernodes, last, columnPlace);
    for (int s = 0; s < last.length; s++) {
      rows[s] = rowsOf(s, tree, tree.below(last[s]), columnPlace);
    }
  }

  /** Layout of the factor of matrices on a pattern, under the order with least fill. */
  static SupernodeLayout of(SymmetricPattern pattern) {
    UnknownGroups groups = new UnknownGroups(pattern);
    return new SupernodeLayout(groups, FillReducingOrdering.best(groups.graph()));
  }

  private void number(
      UnknownGroups groups,
      EliminationTree tree,
      SupernodeTree supernodes,
      int[] last,
      int[] columnPlace) {
    int next = 0;
    for (int s = 0; s < last.length; s++) {
      firstColumn[s] = next;
      for (int column : supernodes.columns(last[s])) {
        columnPlace[column] = next;
        int g = tree.node(column);
        for (int k = 0; k < groups.count(g); k++) {
          oldOf[next] = groups.member(g, k);
          newOf[oldOf[next]] = next;
          next++;
        }
      }
    }
    firstColumn[last.length] = next;
  }

  private int[] rowsOf(int s, EliminationTree tree, int[] below, int[] columnPlace) {
    IntList list = new IntList();
    for (int r = firstColumn[s]; r < firstColumn[s + 1]; r++) {
      list.add(r);
    }
    for (int column : below) {
      for (int k = 0; k < tree.weight(column); k++) {
        list.add(columnPlace[column] + k);
      }
    }
    int[] sorted = list.toArray();
    Arrays.sort(sorted);
    return sorted;
  }

  int size() {
    return size;
  }

  int supernodes() {
    return rows.length;
  }

  /** The caller's number of permuted unknown i. */
  int oldOf(int i) {
    return oldOf[i];
  }

  /** The permuted number of the caller's unknown i. */
  int newOf(int i) {
    return newOf[i];
  }

  /** Rows of the longest supernode. */
  int longest() {
    int longest = 0;
    for (int[] list : rows) {
      longest = Math.max(longest, list.length);
    }
    return longest;
  }

  /** The supernode of the first row below each supernode, -1 for a root. */
  int[] parents() {
    int[] supernodeOf = new int[size];
    int[] parent = new int[rows.length];
    for (int s = rows.length - 1; s >= 0; s--) {
      Arrays.fill(supernodeOf, firstColumn[s], firstColumn[s + 1], s);
      parent[s] = width(s) < rows[s].length ? supernodeOf[rows[s][width(s)]] : -1;
    }
    return parent;
  }

  int firstColumn(int s) {
    return firstColumn[s];
  }

  int width(int s) {
    return firstColumn[s + 1] - firstColumn[s];
  }

  /** Permuted rows of supernode s, ascending, its own columns first; shared. */
  int[] rows(int s) {
    return rows[s];
  }
}
