package auricle.equilibrium;

import auricle.numerics.NewtonIteration;

/** Watches a run of load steps and may end it. */
public interface StepMonitor {
  /** Watches nothing. */
  StepMonitor NONE = (loadFactor, iteration) -> true;

  /**
   * Told of every iteration.
   *
   * @param loadFactor λ that is being solved for
   * @return false to cancel
   */
  boolean proceed(double loadFactor, NewtonIteration iteration);

  /** Told of every state in which the body came to rest. */
  default void reached(EquilibriumState state) {}
}
