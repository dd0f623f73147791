package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.numerics.CliqueSlots;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The contributions of one term as last listed, their places, and who evaluates them. */
final class Contributions {
  private final EnergyTerm term;
  private final Supports supports;
  private final List<TermShare> shares = new ArrayList<>();
  private int version;
  private int[][] stencils = {};
  private double[] energies = {};

  /** Contributions for which the pattern has no room. */
  private int[] outside = {};

  Contributions(EnergyTerm term, Supports supports) {
    this.term = term;
    this.supports = supports;
    list();
  }

  EnergyTerm term() {
    return term;
  }

  int count() {
    return stencils.length;
  }

  /** Unknowns of every contribution, supported ones included; shared. */
  int[][] stencils() {
    return stencils;
  }

  /** Energies at the last evaluation; shared, to be filled by the shares. */
  double[] energies() {
    return energies;
  }

  TermShare share(int number) {
    return shares.get(number);
  }

  /** Free unknowns of every contribution, -1 for supported ones. */
  int[][] cliques() {
    return Arrays.stream(stencils).map(this::free).toArray(int[][]::new);
  }

  /** The same for those to come. */
  int[][] prospects() {
    return term.prospects().stream().map(this::free).toArray(int[][]::new);
  }

  private int[] free(int[] stencil) {
    // no stream: called for every contribution when a body is made
    int[] free = new int[stencil.length];
    for (int a = 0; a < free.length; a++) {
      free[a] = supports.freeNumber(stencil[a]);
    }
    return free;
  }

  /** Whether the term has changed its contributions since they were listed. */
  boolean stale() {
    return term.stencilVersion() != version;
  }

  void list() {
    version = term.stencilVersion();
    stencils = new int[term.count()][];
    Arrays.setAll(stencils, term::stencil);
    energies = new double[stencils.length];
  }

  /**
   * Shares the listed contributions out.
   *
   * @param slots where they go in the pattern
   * @param owner share of every unknown
   * @param ownerOfFree share of every free unknown
   * @param count of shares
   */
  void place(CliqueSlots slots, int[] owner, int[] ownerOfFree, int count) {
    outside = IntStream.range(0, stencils.length).filter(i -> !slots.whole(i)).toArray();
    shares.clear();
    for (int share = 0; share < count; share++) {
      int of = share;
      int[] touching =
          IntStream.range(0, stencils.length)
              .filter(i -> touches(stencils[i], owner, of))
              .toArray();
      shares.add(
          new TermShare(term, stencils, slots.share(touching, ownerOfFree, share), owner, share));
    }
  }

  /** Contributions that touch nothing at all belong to the first share. */
  private static boolean touches(int[] stencil, int[] owner, int share) {
    boolean touches = stencil.length == 0 && share == 0;
    for (int i : stencil) {
      touches |= owner[i] == share;
    }
    return touches;
  }

  /** Whether the pattern has room for all second derivatives that there are at u. */
  boolean fits(double[] u) {
    return Arrays.stream(outside).noneMatch(i -> term.curved(i, u));
  }
}
