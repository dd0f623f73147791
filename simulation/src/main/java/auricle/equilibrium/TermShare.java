package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliqueShare;
import org.jspecify.annotations.Nullable;

/**
 * What of one term belongs to one share of the unknowns: their gradient and their columns of the
 * Hessian, from all contributions that touch them, in order. A contribution on the border of two
 * shares is evaluated by both, so that no sum is shared and none depends on how the unknowns are
 * shared out.
 */
final class TermShare {
  private final EnergyTerm term;
  private final CliqueShare cliques;

  /** Unknowns of each contribution, -1 where they belong to another share. */
  private final int[][] places;

  /** Whether each counts for the sums that have one entry a contribution. */
  private final boolean[] first;

  private final double[] localGradient;
  private final double[] localHessian;

  /**
   * @param stencils unknowns of every contribution of the term
   * @param cliques those that touch the share
   * @param owner the share of every unknown
   * @param share this one
   */
  TermShare(EnergyTerm term, int[][] stencils, CliqueShare cliques, int[] owner, int share) {
    this.term = term;
    this.cliques = cliques;
    int n = cliques.count();
    places = new int[n][];
    first = new boolean[n];
    int longest = 0;
    for (int k = 0; k < n; k++) {
      int[] stencil = stencils[cliques.clique(k)];
      first[k] = stencil.length == 0 || owner[stencil[0]] == share;
      places[k] = places(stencil, owner, share);
      longest = Math.max(longest, stencil.length);
    }
    localGradient = new double[longest];
    localHessian = new double[longest * longest];
  }

  private static int[] places(int[] stencil, int[] owner, int share) {
    boolean whole = true;
    int[] places = new int[stencil.length];
    for (int a = 0; a < stencil.length; a++) {
      boolean mine = owner[stencil[a]] == share;
      places[a] = mine ? stencil[a] : -1;
      whole &= mine;
    }
    return whole ? stencil : places;
  }

  /** Writes the energies of the contributions that count here. */
  void values(double[] u, double[] energies) {
    for (int k = 0; k < places.length; k++) {
      if (first[k]) {
        energies[cliques.clique(k)] = term.value(cliques.clique(k), u);
      }
    }
  }

  /** Lets the contributions that count here foresee their forces after a step. */
  void foresee(double[] from, double[] to) {
    for (int k = 0; k < places.length; k++) {
      if (first[k]) {
        term.foresee(cliques.clique(k), from, to);
      }
    }
  }

  /**
   * Adds this share's part of gradient, size of it and Hessian, and writes the energies of the
   * contributions that count here.
   */
  void derivatives(
      double[] u,
      double[] gradient,
      double[] size,
      double @Nullable [] hessian,
      double[] energies) {
    for (int k = 0; k < places.length; k++) {
      int i = cliques.clique(k);
      double energy =
          hessian == null
              ? term.gradient(i, u, localGradient)
              : term.derivatives(i, u, localGradient, localHessian);
      if (first[k]) {
        energies[i] = energy;
      }
      int[] mine = places[k];
      for (int a = 0; a < mine.length; a++) {
        if (mine[a] >= 0) {
          gradient[mine[a]] += localGradient[a];
          size[mine[a]] += Math.abs(localGradient[a]);
        }
      }
      if (hessian != null) {
        cliques.add(k, localHessian, mine.length, hessian);
      }
    }
  }
}
