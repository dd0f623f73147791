package auricle.healing;

/** Watches a run of steps in time and may end it. */
@FunctionalInterface
public interface TimeMonitor {
  /** Watches nothing. */
  TimeMonitor NONE = time_s -> true;

  /**
   * Told of every iteration, and asked before and after every step.
   *
   * @param time_s the time that is being solved for, s
   * @return false to cancel
   */
  boolean proceed(double time_s);
}
