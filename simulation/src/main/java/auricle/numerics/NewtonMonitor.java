package auricle.numerics;

/** Watches a solution and may end it. Called from the solving thread, once an iteration. */
public interface NewtonMonitor {
  /** Watches nothing. */
  NewtonMonitor NONE = iteration -> true;

  /**
   * Told of an iteration.
   *
   * @return false to cancel
   */
  boolean proceed(NewtonIteration iteration);
}
