package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliquePattern;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Sums terms over all unknowns, supported ones included, and the Hessian over the free ones. The
 * order of summation is fixed; no evaluation allocates.
 */
final class Assembly {
  private final List<EnergyTerm> terms;
  private final Supports supports;
  private final double[] gradient;
  private final double[] size;
  private final int[] versions;
  private final int[][][] stencils;
  private CliquePattern pattern;
  private double[] localGradient = new double[0];
  private double[] localHessian = new double[0];
  private double energySize;

  Assembly(List<? extends EnergyTerm> terms, Supports supports) {
    this.terms = List.copyOf(terms);
    this.supports = supports;
    gradient = new double[supports.size()];
    size = new double[supports.size()];
    versions = new int[terms.size()];
    stencils = new int[terms.size()][][];
    pattern = build();
  }

  List<EnergyTerm> terms() {
    return terms;
  }

  CliquePattern pattern() {
    return pattern;
  }

  /** ∂W/∂u by all unknowns at the last {@link #derivatives}; shared. */
  double[] gradient() {
    return gradient;
  }

  /** Σ |contribution to the gradient| by unknown at the last {@link #derivatives}; shared. */
  double[] size() {
    return size;
  }

  /** Σ |contribution to the energy| at the last {@link #derivatives}. */
  double energySize() {
    return energySize;
  }

  /** Lets terms foresee their forces after a step. */
  void foresee(double[] from, double[] to) {
    for (EnergyTerm term : terms) {
      term.foresee(from, to);
    }
  }

  /** Lets terms look for their partners, and makes a new pattern if stencils have changed. */
  void update(double[] u) {
    boolean stale = false;
    for (int t = 0; t < versions.length; t++) {
      terms.get(t).update(u);
      stale |= terms.get(t).stencilVersion() != versions[t];
    }
    if (stale) {
      pattern = build();
    }
  }

  private CliquePattern build() {
    int longest = 0;
    int[][][] cliques = new int[versions.length][][];
    for (int t = 0; t < versions.length; t++) {
      EnergyTerm term = terms.get(t);
      versions[t] = term.stencilVersion();
      stencils[t] = new int[term.count()][];
      cliques[t] = new int[term.count()][];
      for (int i = 0; i < stencils[t].length; i++) {
        stencils[t][i] = term.stencil(i);
        cliques[t][i] = Arrays.stream(stencils[t][i]).map(supports::freeNumber).toArray();
        longest = Math.max(longest, stencils[t][i].length);
      }
    }
    localGradient = new double[longest];
    localHessian = new double[longest * longest];
    return new CliquePattern(
        supports.freeCount(), Arrays.stream(cliques).flatMap(Arrays::stream).toArray(int[][]::new));
  }

  double value(double[] u) {
    double sum = 0;
    for (int t = 0; t < versions.length; t++) {
      EnergyTerm term = terms.get(t);
      for (int i = 0; i < stencils[t].length; i++) {
        sum += term.value(i, u);
      }
    }
    return sum;
  }

  /** Energy of the terms that count from the present frames. */
  double valueFromFrames(double[] u) {
    double sum = 0;
    for (int t = 0; t < versions.length; t++) {
      EnergyTerm term = terms.get(t);
      for (int i = 0; term.countsFromFrames() && i < stencils[t].length; i++) {
        sum += term.value(i, u);
      }
    }
    return sum;
  }

  /**
   * Energy with gradient and, if wanted, Hessian.
   *
   * @param hessian values on {@link #pattern()}, added to; null if not wanted
   */
  double derivatives(double[] u, double @Nullable [] hessian) {
    Arrays.fill(gradient, 0);
    Arrays.fill(size, 0);
    energySize = 0;
    double sum = 0;
    int clique = 0;
    for (int t = 0; t < versions.length; t++) {
      EnergyTerm term = terms.get(t);
      for (int i = 0; i < stencils[t].length; i++) {
        int[] stencil = stencils[t][i];
        double energy =
            hessian == null
                ? term.gradient(i, u, localGradient)
                : term.derivatives(i, u, localGradient, localHessian);
        sum += energy;
        energySize += Math.abs(energy);
        for (int a = 0; a < stencil.length; a++) {
          gradient[stencil[a]] += localGradient[a];
          size[stencil[a]] += Math.abs(localGradient[a]);
        }
        if (hessian != null) {
          pattern.add(clique++, localHessian, stencil.length, hessian);
        }
      }
    }
    return sum;
  }

  double largestStep(double[] u, double[] direction) {
    double largest = Double.POSITIVE_INFINITY;
    for (EnergyTerm term : terms) {
      largest = Math.min(largest, term.largestStep(u, direction));
    }
    return largest;
  }
}
