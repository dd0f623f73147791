package auricle.healing;

import auricle.numerics.Outcome;
import java.util.List;

/**
 * How a run of steps in time ended.
 *
 * @param outcome converged: at rest at the time asked for
 * @param reason the same in words
 * @param steps steps taken
 * @param rejected steps tried again with a shorter one
 * @param iterations Newton iterations of all of them
 * @param events what happened on the way, in order
 */
public record TimeResult(
    Outcome outcome,
    String reason,
    int steps,
    int rejected,
    int iterations,
    List<TimeEvent> events) {
  /** Keeps its own copy of the events. */
  public TimeResult {
    events = List.copyOf(events);
  }

  /** Whether the time asked for was reached, at rest. */
  public boolean converged() {
    return outcome == Outcome.CONVERGED;
  }
}
