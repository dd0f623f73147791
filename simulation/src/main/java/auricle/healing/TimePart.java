package auricle.healing;

import auricle.energy.EnergyTerm;
import java.util.List;
import java.util.Optional;

/**
 * A part of the body that changes with time. Over a step its strains (or its tension) are taken to
 * go linearly with time, and its own law is integrated exactly for that: second order, implicit,
 * stable for steps of any size, exact where the strain is held.
 *
 * <p>Order of calls: {@link #aim}, a solution, then either {@link #arrive} or, where the step is
 * not taken, another {@code aim}.
 */
public interface TimePart {
  /** The energies of the part; always the same objects. */
  List<? extends EnergyTerm> terms();

  /**
   * Sets the terms so that at load factor 1 their minimum is the state at the end of a step from
   * the present. A step of no length is an instant: nothing flows, only what acts from outside
   * changes.
   *
   * @param from_s present time, s since the start
   * @param to_s end of the step, s, not before the present
   */
  void aim(double from_s, double to_s);

  /**
   * Takes the part's own variables to the end of the step aimed at.
   *
   * @param u unknowns at rest there
   */
  void arrive(double[] u);

  /**
   * Whether the part gives way at the end of the step aimed at: what happens, in words. The caller
   * shortens the step until the moment is known well enough, arrives, and then calls {@link #give}.
   *
   * @param u unknowns at rest there
   */
  default Optional<String> yields(double[] u) {
    return Optional.empty();
  }

  /**
   * Gives way: from load factor 0, at which nothing has changed, to 1 the terms go to what is left.
   * The part keeps to that from then on.
   */
  default void give(double[] u) {}

  /** The next time after this one at which the part changes abruptly, s; infinite if never. */
  default double nextChange(double after_s) {
    return Double.POSITIVE_INFINITY;
  }
}
