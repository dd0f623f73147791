package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliqueShare;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What belongs to one share of the unknowns: their gradient and their columns of the Hessian, from
 * all contributions that touch them, in the order of all contributions. A contribution on the
 * border of two shares is evaluated by both, so that no sum is shared and none depends on how the
 * unknowns are shared out.
 */
final class AssemblyShare {
  private final List<EnergyTerm> terms;
  private final CliqueShare cliques;
  private final int[] term;
  private final int[] number;

  /** Unknowns of each contribution, -1 where they belong to another share. */
  private final int[][] places;

  /** Whether each counts for the sums that have one entry a contribution. */
  private final boolean[] first;

  private final double[] localGradient;
  private final double[] localHessian;

  /**
   * @param stencils unknowns of every contribution of every term
   * @param owner the share of every unknown
   * @param share this one
   */
  AssemblyShare(
      List<EnergyTerm> terms, int[][][] stencils, CliqueShare cliques, int[] owner, int share) {
    this.terms = terms;
    this.cliques = cliques;
    int n = cliques.count();
    term = new int[n];
    number = new int[n];
    places = new int[n][];
    first = new boolean[n];
    int longest = 0;
    int k = 0;
    int all = 0;
    for (int t = 0; t < stencils.length; t++) {
      for (int i = 0; i < stencils[t].length; i++, all++) {
        if (k < n && cliques.clique(k) == all) {
          int[] stencil = stencils[t][i];
          term[k] = t;
          number[k] = i;
          first[k] = stencil.length == 0 || owner[stencil[0]] == share;
          places[k] = places(stencil, owner, share);
          longest = Math.max(longest, stencil.length);
          k++;
        }
      }
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
  void values(double[] u, boolean fromFramesAlone, double[] energies) {
    for (int k = 0; k < term.length; k++) {
      EnergyTerm t = terms.get(term[k]);
      if (first[k] && (!fromFramesAlone || t.countsFromFrames())) {
        energies[cliques.clique(k)] = t.value(number[k], u);
      }
    }
  }

  /** Lets the contributions that count here foresee their forces after a step. */
  void foresee(double[] from, double[] to) {
    for (int k = 0; k < term.length; k++) {
      if (first[k]) {
        terms.get(term[k]).foresee(number[k], from, to);
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
    for (int k = 0; k < term.length; k++) {
      EnergyTerm t = terms.get(term[k]);
      double energy =
          hessian == null
              ? t.gradient(number[k], u, localGradient)
              : t.derivatives(number[k], u, localGradient, localHessian);
      if (first[k]) {
        energies[cliques.clique(k)] = energy;
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
