package auricle.equilibrium;

import auricle.numerics.NewtonResult;

/** Where a body came to rest, or failed to, at one load factor. */
public final class EquilibriumState {
  private final double loadFactor;
  private final double[] unknowns;
  private final double[] frames;
  private final double[] forces;
  private final NewtonResult solution;
  private final boolean requested;

  EquilibriumState(TotalEnergy energy, NewtonResult solution, boolean requested) {
    this.loadFactor = energy.loadFactor();
    this.unknowns = energy.unknowns().clone();
    this.frames = energy.frames();
    this.forces = energy.forces().clone();
    this.solution = solution;
    this.requested = requested;
  }

  /** λ. */
  public double loadFactor() {
    return loadFactor;
  }

  /** All unknowns; a copy. */
  public double[] unknowns() {
    return unknowns.clone();
  }

  /** State of the frames that the tilts are measured in; a copy. */
  public double[] frames() {
    return frames.clone();
  }

  /**
   * Reaction on a supported unknown, N or N·mm: what the support exerts on the body, positive along
   * the unknown. On a free unknown, the residual.
   */
  public double reaction(int unknown) {
    return forces[unknown];
  }

  /** How the solution ended, with the iteration table. */
  public NewtonResult solution() {
    return solution;
  }

  /** Whether λ was asked for, or is a step in between. */
  public boolean requested() {
    return requested;
  }
}
