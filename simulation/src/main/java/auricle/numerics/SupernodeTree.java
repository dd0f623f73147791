package auricle.numerics;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Columns of an elimination tree merged into supernodes: a child joins its parent if that stores
 * few explicit zeros more (Ashcraft and Grimes 1989, ACM Trans. Math. Softw. 15, 291-309). A
 * supernode is known by its last column, whose structure below is that of the whole supernode.
 */
final class SupernodeTree {
  /** Share of explicit zeros that any supernode may hold, and more for one that is still narrow. */
  private static final double MODERATE = 0.1;

  private static final double GENEROUS = 0.25;
  private static final int NARROW = 30;

  private final EliminationTree tree;
  private final int[] width;
  private final double[] zeros;
  private final IntList[] columns;
  private final IntList[] children;
  private final IntList roots = new IntList();

  SupernodeTree(EliminationTree tree) {
    int n = tree.size();
    this.tree = tree;
    width = new int[n];
    zeros = new double[n];
    columns = new IntList[n];
    children = new IntList[n];
    for (int j = 0; j < n; j++) {
      width[j] = tree.weight(j);
      columns[j] = new IntList();
      children[j] = new IntList();
    }
    for (int j = 0; j < n; j++) {
      absorbChildren(j);
      (tree.parent(j) < 0 ? roots : children[tree.parent(j)]).add(j);
    }
  }

  private void absorbChildren(int j) {
    Integer[] candidates = Arrays.stream(children[j].toArray()).boxed().toArray(Integer[]::new);
    Arrays.sort(candidates, Comparator.comparingDouble(c -> newZeros(c, j)));
    IntList kept = new IntList();
    for (int c : candidates) {
      if (worthMerging(c, j)) {
        zeros[j] += zeros[c] + newZeros(c, j);
        width[j] += width[c];
        columns[j].addAll(columns[c]);
        kept.addAll(children[c]);
      } else {
        kept.add(c);
      }
    }
    columns[j].add(j);
    children[j] = kept;
  }

  private double newZeros(int c, int j) {
    return (double) width[c] * (width[j] + tree.belowWeight(j) - tree.belowWeight(c));
  }

  private boolean worthMerging(int c, int j) {
    double newZeros = newZeros(c, j);
    if (newZeros == 0) {
      return true;
    }
    double w = width[c] + width[j];
    double stored = w * (w + 1) / 2 + w * tree.belowWeight(j);
    double share = (zeros[c] + zeros[j] + newZeros) / stored;
    return share < MODERATE || (w <= NARROW && share < GENEROUS);
  }

  /** Supernodes by their last columns, children before parents. */
  int[] postorder() {
    IntList order = new IntList();
    IntList stack = new IntList();
    stack.addAll(roots);
    while (stack.size() > 0) {
      int j = stack.removeLast();
      order.add(j);
      stack.addAll(children[j]);
    }
    int[] reversed = order.toArray();
    for (int a = 0, b = reversed.length - 1; a < b; a++, b--) {
      int keep = reversed[a];
      reversed[a] = reversed[b];
      reversed[b] = keep;
    }
    return reversed;
  }

  /** Columns of the supernode whose last column is j, in elimination order. */
  int[] columns(int j) {
    return columns[j].toArray();
  }
}
