package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliquePattern;
import auricle.numerics.CliqueSlots;
import auricle.numerics.SymmetricPattern;
import auricle.numerics.Workers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Sums terms over all unknowns, supported ones included, and the Hessian over the free ones. The
 * {@link Workers} present share the unknowns; every sum is made by one of them in the order of the
 * contributions, so that it has the same bits whatever their number. No evaluation allocates
 * anything that grows with the body.
 *
 * <p>The sparse pattern is kept as long as it has room for every second derivative that is not zero
 * where terms are linearised next, though contacts come and go.
 */
final class Assembly {
  /** Contributions below which a share is not worth another thread. */
  private static final int WORTH_SHARING = 400;

  private final List<EnergyTerm> terms;
  private final List<Contributions> parts = new ArrayList<>();
  private final Supports supports;
  private final double[] gradient;
  private final double[] size;
  private SymmetricPattern pattern;

  /** The share of every unknown, kept when contacts change: it may be any. */
  private final int[] owner;

  private final int[] ownerOfFree;
  private final int shares;
  private double energySize;

  Assembly(List<? extends EnergyTerm> terms, Supports supports) {
    this.terms = List.copyOf(terms);
    this.supports = supports;
    gradient = new double[supports.size()];
    size = new double[supports.size()];
    terms.forEach(term -> parts.add(new Contributions(term, supports)));
    int[][] all =
        parts.stream().flatMap(part -> Arrays.stream(part.stencils())).toArray(int[][]::new);
    shares = Math.min(Workers.present().threads(), 1 + all.length / WORTH_SHARING);
    owner = UnknownShares.of(supports.size(), all, shares);
    ownerOfFree = new int[supports.freeCount()];
    Arrays.setAll(ownerOfFree, i -> owner[supports.unknown(i)]);
    pattern = build();
  }

  List<EnergyTerm> terms() {
    return terms;
  }

  SymmetricPattern pattern() {
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
    side((share, worker) -> parts.forEach(part -> part.share(share).foresee(from, to)));
  }

  private void side(Workers.Work work) {
    (shares > 1 ? Workers.present() : Workers.ALONE).run(shares, work);
  }

  /**
   * Lets terms look for their partners, places what has changed, and makes a new pattern if the
   * present one has no room for second derivatives at u.
   */
  void update(double[] u) {
    boolean fits = true;
    for (Contributions part : parts) {
      part.term().update(u);
      if (part.stale()) {
        part.list();
        place(part, CliqueSlots.in(pattern, part.cliques()));
      }
      fits &= part.fits(u);
    }
    if (!fits) {
      pattern = build();
    }
  }

  private void place(Contributions part, CliqueSlots slots) {
    part.place(slots, owner, ownerOfFree, shares);
  }

  private SymmetricPattern build() {
    Stream<int[]> present = parts.stream().flatMap(part -> Arrays.stream(part.cliques()));
    Stream<int[]> toCome = parts.stream().flatMap(part -> Arrays.stream(part.prospects()));
    CliquePattern made =
        new CliquePattern(
            supports.freeCount(), Stream.concat(present, toCome).toArray(int[][]::new));
    int from = 0;
    for (Contributions part : parts) {
      place(part, made.slots(from, from + part.count()));
      from += part.count();
    }
    return made.pattern();
  }

  double value(double[] u) {
    return value(u, false);
  }

  /** Energy of the terms that count from the present frames. */
  double valueFromFrames(double[] u) {
    return terms.stream().anyMatch(EnergyTerm::countsFromFrames) ? value(u, true) : 0;
  }

  private double value(double[] u, boolean fromFramesAlone) {
    side(
        (share, worker) -> {
          for (Contributions part : parts) {
            if (!fromFramesAlone || part.term().countsFromFrames()) {
              part.share(share).values(u, part.energies());
            }
          }
        });
    double sum = 0;
    for (Contributions part : parts) {
      if (!fromFramesAlone || part.term().countsFromFrames()) {
        for (double energy : part.energies()) {
          sum += energy;
        }
      }
    }
    return sum;
  }

  /**
   * Energy with gradient and, if wanted, Hessian.
   *
   * @param hessian values on {@link #pattern()}, added to; null if not wanted. It lacks what there
   *     was no room for: nothing at the point last updated to
   */
  double derivatives(double[] u, double @Nullable [] hessian) {
    Arrays.fill(gradient, 0);
    Arrays.fill(size, 0);
    side(
        (share, worker) -> {
          for (Contributions part : parts) {
            part.share(share).derivatives(u, gradient, size, hessian, part.energies());
          }
        });
    energySize = 0;
    double sum = 0;
    for (Contributions part : parts) {
      for (double energy : part.energies()) {
        sum += energy;
        energySize += Math.abs(energy);
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
