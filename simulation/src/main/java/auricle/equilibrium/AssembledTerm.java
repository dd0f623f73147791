package auricle.equilibrium;

import auricle.energy.EnergyTerm;

/** A term with its stencils as they were when the pattern was made. */
final class AssembledTerm {
  private final EnergyTerm term;
  private int[][] stencils = new int[0][];
  private int version;

  AssembledTerm(EnergyTerm term) {
    this.term = term;
  }

  EnergyTerm term() {
    return term;
  }

  /** Whether the stencils have changed since {@link #read}. */
  boolean stale() {
    return term.stencilVersion() != version;
  }

  /** Reads the stencils. */
  void read() {
    version = term.stencilVersion();
    stencils = new int[term.count()][];
    for (int i = 0; i < stencils.length; i++) {
      stencils[i] = term.stencil(i);
    }
  }

  int count() {
    return stencils.length;
  }

  int[] stencil(int i) {
    return stencils[i];
  }

  int longest() {
    int longest = 0;
    for (int[] stencil : stencils) {
      longest = Math.max(longest, stencil.length);
    }
    return longest;
  }
}
