package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliquePattern;
import auricle.numerics.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Sums terms over all unknowns, supported ones included, and the Hessian over the free ones. The
 * {@link Workers} present share the unknowns; every sum is made by one of them in the order of the
 * contributions, so that it has the same bits whatever their number. No evaluation allocates
 * anything that grows with the body.
 */
final class Assembly {
  /** Contributions below which a share is not worth another thread. */
  private static final int WORTH_SHARING = 400;

  private final List<EnergyTerm> terms;
  private final Supports supports;
  private final double[] gradient;
  private final double[] size;
  private final int[] versions;
  private final int[][][] stencils;
  private final List<AssemblyShare> shares = new ArrayList<>();
  private CliquePattern pattern;

  /** The share of every unknown, kept when contacts change: it may be any. */
  private int[] owner = new int[0];

  private double[] energies = new double[0];
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
    side((share, worker) -> shares.get(share).foresee(from, to));
  }

  private void side(Workers.Work work) {
    (shares.size() > 1 ? Workers.present() : Workers.ALONE).run(shares.size(), work);
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
    for (int t = 0; t < versions.length; t++) {
      EnergyTerm term = terms.get(t);
      versions[t] = term.stencilVersion();
      stencils[t] = new int[term.count()][];
      Arrays.setAll(stencils[t], term::stencil);
    }
    int[][] all = Arrays.stream(stencils).flatMap(Arrays::stream).toArray(int[][]::new);
    int[][] cliques = Arrays.stream(all).map(this::free).toArray(int[][]::new);
    CliquePattern made = new CliquePattern(supports.freeCount(), cliques);
    energies = new double[all.length];
    share(all, made);
    return made;
  }

  private int[] free(int[] stencil) {
    return Arrays.stream(stencil).map(supports::freeNumber).toArray();
  }

  private void share(int[][] all, CliquePattern made) {
    int worth = Math.min(Workers.present().threads(), 1 + all.length / WORTH_SHARING);
    int count = shares.isEmpty() ? worth : shares.size();
    if (shares.isEmpty()) {
      owner = UnknownShares.of(supports.size(), all, count);
    }
    int[] ownerOfFree = new int[supports.freeCount()];
    Arrays.setAll(ownerOfFree, i -> owner[supports.unknown(i)]);
    shares.clear();
    for (int share = 0; share < count; share++) {
      int of = share;
      int[] touching =
          IntStream.range(0, all.length).filter(k -> touches(all[k], owner, of)).toArray();
      shares.add(
          new AssemblyShare(
              terms, stencils, made.share(touching, ownerOfFree, share), owner, share));
    }
  }

  /** Contributions that touch nothing at all belong to the first share. */
  private static boolean touches(int[] stencil, int[] owner, int share) {
    return stencil.length == 0
        ? share == 0
        : Arrays.stream(stencil).anyMatch(i -> owner[i] == share);
  }

  double value(double[] u) {
    return value(u, false);
  }

  /** Energy of the terms that count from the present frames. */
  double valueFromFrames(double[] u) {
    return terms.stream().anyMatch(EnergyTerm::countsFromFrames) ? value(u, true) : 0;
  }

  private double value(double[] u, boolean fromFramesAlone) {
    Arrays.fill(energies, 0);
    side((share, worker) -> shares.get(share).values(u, fromFramesAlone, energies));
    double sum = 0;
    for (double energy : energies) {
      sum += energy;
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
    side((share, worker) -> shares.get(share).derivatives(u, gradient, size, hessian, energies));
    energySize = 0;
    double sum = 0;
    for (double energy : energies) {
      sum += energy;
      energySize += Math.abs(energy);
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
