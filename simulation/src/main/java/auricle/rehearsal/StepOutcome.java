package auricle.rehearsal;

import java.util.List;

/**
 * How a step ended.
 *
 * @param converged whether forces balance at a minimum of the energy; only then are the figures of
 *     the step those of a state of rest
 * @param cancelled whether it was ended on request
 * @param words the outcome for a user
 * @param iterations Newton iterations, failed attempts included
 * @param residual_n largest residual force, N
 * @param tolerance_n what it had to come below, N
 * @param events snaps and limit points passed, in words
 */
public record StepOutcome(
    boolean converged,
    boolean cancelled,
    String words,
    int iterations,
    double residual_n,
    double tolerance_n,
    List<String> events) {
  /** Keeps its own copy of the events. */
  public StepOutcome {
    events = List.copyOf(events);
  }
}
