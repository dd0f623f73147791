package auricle.equilibrium;

import java.util.Arrays;

/**
 * Shares out unknowns so that few contributions touch two shares: neighbours are visited level by
 * level from one end of the body to the other, and the order of visits is cut into even pieces.
 */
final class UnknownShares {
  private final int[][] stencils;
  private final int[] start;
  private final int[] touching;
  private final int[] order;
  private final boolean[] seen;
  private int visited;

  private UnknownShares(int unknowns, int[][] stencils) {
    this.stencils = stencils;
    start = new int[unknowns + 1];
    for (int[] stencil : stencils) {
      for (int i : stencil) {
        start[i + 1]++;
      }
    }
    for (int i = 0; i < unknowns; i++) {
      start[i + 1] += start[i];
    }
    touching = new int[start[unknowns]];
    int[] fill = start.clone();
    for (int k = 0; k < stencils.length; k++) {
      for (int i : stencils[k]) {
        touching[fill[i]++] = k;
      }
    }
    order = new int[unknowns];
    seen = new boolean[unknowns];
  }

  /**
   * The share that every unknown belongs to, 0 .. shares - 1.
   *
   * @param unknowns how many
   * @param stencils unknowns that belong together
   */
  static int[] of(int unknowns, int[][] stencils, int shares) {
    int[] owner = new int[unknowns];
    if (shares > 1) {
      UnknownShares visit = new UnknownShares(unknowns, stencils);
      visit.all(0);
      visit.all(visit.order[unknowns - 1]);
      for (int k = 0; k < unknowns; k++) {
        owner[visit.order[k]] = (int) ((long) k * shares / unknowns);
      }
    }
    return owner;
  }

  private void all(int first) {
    Arrays.fill(seen, false);
    visited = 0;
    boolean[] used = new boolean[stencils.length];
    from(first, used);
    for (int i = 0; i < order.length; i++) {
      from(i, used);
    }
  }

  private void from(int first, boolean[] used) {
    int next = visited;
    visit(first);
    for (; next < visited; next++) {
      int i = order[next];
      for (int p = start[i]; p < start[i + 1]; p++) {
        int k = touching[p];
        for (int j = 0; !used[k] && j < stencils[k].length; j++) {
          visit(stencils[k][j]);
        }
        used[k] = true;
      }
    }
  }

  private void visit(int i) {
    if (!seen[i]) {
      seen[i] = true;
      order[visited++] = i;
    }
  }
}
