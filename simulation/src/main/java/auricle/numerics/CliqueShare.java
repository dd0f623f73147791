package auricle.numerics;

/**
 * The cliques of a pattern that touch a share of the unknowns, and their entries that are in it.
 */
public final class CliqueShare {
  private final int[] cliques;
  private final int[] offset;
  private final int[] slots;

  /**
   * @param cliques ascending
   * @param offset where the entries of each begin
   * @param slots of the entries, -1 for those that are left out
   */
  CliqueShare(int[] cliques, int[] offset, int[] slots) {
    this.cliques = cliques;
    this.offset = offset;
    this.slots = slots;
  }

  /** How many cliques. */
  public int count() {
    return cliques.length;
  }

  /** The k-th of them, ascending in k. */
  public int clique(int k) {
    return cliques[k];
  }

  /**
   * Adds those entries of a dense symmetric matrix to the sum that are in this share.
   *
   * @param k which of the cliques here
   * @param dense m × m, row by row
   * @param m its order
   * @param values of a matrix on the pattern
   */
  public void add(int k, double[] dense, int m, double[] values) {
    int s = offset[k];
    for (int a = 0; a < m; a++) {
      int row = a * m;
      for (int b = 0; b <= a; b++) {
        int slot = slots[s++];
        if (slot >= 0) {
          values[slot] += dense[row + b];
        }
      }
    }
  }
}
