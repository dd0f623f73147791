package auricle.energy;

import java.util.List;

/**
 * A sum of small smooth contributions to the total energy, in mJ (N·mm).
 *
 * <p>The unknowns u are laid out by {@link auricle.mesh.Unknowns}: three coordinates a vertex, then
 * two tilts a director. Contribution i touches only the unknowns of its stencil.
 *
 * <p>Local arrays: the gradient has one entry per stencil place, in stencil order; the Hessian is
 * square, row by row, both triangles filled, entry (r, c) at {@code r * stencilLength + c}. A term
 * overwrites them, so the caller need not clear them.
 *
 * <p>An evaluation may not change the term: the same u always gives the same bits, whichever of
 * several threads asks.
 */
public interface EnergyTerm {
  /** What the term is, for tables and messages: "shell", "thread 2", "head contact". */
  String name();

  /** Number of contributions. */
  int count();

  /**
   * Unknowns that contribution i touches, without repetition; shared, not to be changed. It stays
   * the same as long as {@link #stencilVersion()} does.
   */
  int[] stencil(int i);

  /** Energy of contribution i at u, mJ. */
  double value(int i, double[] u);

  /**
   * Energy of contribution i with its derivatives.
   *
   * @param gradient filled with the derivative by each stencil place
   * @param hessian filled with the second derivatives
   * @return energy, mJ
   */
  double derivatives(int i, double[] u, double[] gradient, double[] hessian);

  /**
   * Energy of contribution i with its gradient alone: what {@link #derivatives} gives, for less.
   *
   * @param gradient filled with the derivative by each stencil place
   * @return energy, mJ
   */
  default double gradient(int i, double[] u, double[] gradient) {
    int n = stencil(i).length;
    return derivatives(i, u, gradient, new double[n * n]);
  }

  /**
   * Largest fraction t ≥ 0 for which u + t·direction stays inside the domain of this term; positive
   * infinity where there is no limit.
   */
  default double largestStep(double[] u, double[] direction) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Changes whenever a stencil or the count has changed: contributions are then placed anew, in the
   * sparse pattern that there is as far as it has room.
   */
  default int stencilVersion() {
    return 0;
  }

  /**
   * Whether contribution i may have second derivatives at u, where it is linearised next. One that
   * has none needs no room in the sparse pattern.
   */
  default boolean curved(int i, double[] u) {
    return true;
  }

  /**
   * Unknowns that other contributions than the present ones may couple soon, each list without
   * repetition: where a sparse pattern is made anew, it gets room for them.
   */
  default List<int[]> prospects() {
    return List.of();
  }

  /**
   * Called between iterations, never inside one, with the current unknowns: a term that looks for
   * its partners (contact) does so here.
   */
  default void update(double[] u) {}

  /**
   * Called between iterations, before the frames of the tilts are laid anew, when a step has led
   * from one place to another: a term may take the forces that its linearisation at the first
   * expects at the second, and let its Hessian turn those instead of the forces that are there, up
   * to the next call. Both agree where the step was short; value and gradient are always those that
   * are there. Several threads may ask at once, each for other contributions.
   *
   * @param i contribution
   * @param from unknowns at the last linearisation; the same array as {@code to} where there was no
   *     step, and the forces that are there are those to be turned
   * @param to unknowns at the next one, in the frames of the first
   */
  default void foresee(int i, double[] from, double[] to) {}

  /**
   * Sets the load factor λ (0 at the start of a load step's path, 1 at its end) for all evaluations
   * that follow; 1 until it is called. Loads and tightening threads go with it, other terms do not
   * care. Never called within an iteration.
   */
  default void setLoadFactor(double loadFactor) {}

  /**
   * Whether the energy counts from the present frames of the tilts, so that it jumps by a constant
   * when these are laid anew between iterations.
   */
  default boolean countsFromFrames() {
    return false;
  }
}
