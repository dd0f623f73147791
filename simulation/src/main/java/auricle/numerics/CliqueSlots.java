package auricle.numerics;

import java.util.Arrays;

/**
 * Where the entries of dense little matrices go in a sparse one, all together or share by share.
 *
 * <p>Clique i is a list of unknowns; places that are eliminated are -1. Its local entries are
 * numbered row by row over the lower triangle, (a, b) with b ≤ a at a (a + 1) / 2 + b.
 */
public final class CliqueSlots {
  private final int[][] cliques;
  private final int[] offset;
  private final int[] slots;

  CliqueSlots(int[][] cliques, int[] slots) {
    this.cliques = cliques;
    this.slots = slots;
    offset = offsets(cliques);
  }

  /**
   * Cliques on a pattern that was not made for them: {@link #whole} tells which fit in.
   *
   * @param cliques unknowns of each clique, each at most once, -1 for none
   */
  public static CliqueSlots in(SymmetricPattern pattern, int[][] cliques) {
    int[] slots = new int[offsets(cliques)[cliques.length]];
    int next = 0;
    for (int[] clique : cliques) {
      for (int a = 0; a < clique.length; a++) {
        for (int b = 0; b <= a; b++) {
          boolean free = clique[a] >= 0 && clique[b] >= 0;
          slots[next++] = free ? Math.max(-1, pattern.find(clique[a], clique[b])) : -1;
        }
      }
    }
    return new CliqueSlots(cliques, slots);
  }

  static int[] offsets(int[][] cliques) {
    int[] offset = new int[cliques.length + 1];
    for (int i = 0; i < cliques.length; i++) {
      int m = cliques[i].length;
      offset[i + 1] = offset[i] + m * (m + 1) / 2;
    }
    return offset;
  }

  /** Whether the pattern has all entries of a clique. */
  public boolean whole(int i) {
    int[] clique = cliques[i];
    boolean whole = true;
    int next = offset[i];
    for (int a = 0; a < clique.length; a++) {
      for (int b = 0; b <= a; b++) {
        whole &= slots[next++] >= 0 || clique[a] < 0 || clique[b] < 0;
      }
    }
    return whole;
  }

  /**
   * The cliques that touch a share of the unknowns, with their entries in columns of that share.
   *
   * @param touching ascending; every clique with an unknown of the share is among them
   * @param owner the share that column j belongs to
   * @param share which
   */
  public CliqueShare share(int[] touching, int[] owner, int share) {
    int[] from = new int[touching.length + 1];
    for (int k = 0; k < touching.length; k++) {
      from[k + 1] = from[k] + offset[touching[k] + 1] - offset[touching[k]];
    }
    int[] of = new int[from[touching.length]];
    Arrays.fill(of, -1);
    for (int k = 0; k < touching.length; k++) {
      int[] clique = cliques[touching[k]];
      int here = offset[touching[k]];
      int next = from[k];
      for (int a = 0; a < clique.length; a++) {
        for (int b = 0; b <= a; b++, here++, next++) {
          if (slots[here] >= 0 && owner[Math.min(clique[a], clique[b])] == share) {
            of[next] = slots[here];
          }
        }
      }
    }
    return new CliqueShare(touching, from, of);
  }
}
