package auricle.rehearsal;

import auricle.measurement.Measures;
import auricle.plan.Operation;
import java.util.List;
import java.util.Optional;

/**
 * The ear after one step of the plan.
 *
 * @param label name of the operation, or "before"
 * @param operation what was done; none before the plan
 * @param outcome how the step ended; if it did not converge, all that follows is the last state of
 *     rest on the way
 * @param measures all measurements
 * @param threads all threads that are in, tied or slack
 * @param extremes greatest strain and stress
 * @param shape for drawing and files
 */
public record StepResult(
    String label,
    Optional<Operation> operation,
    StepOutcome outcome,
    Measures measures,
    List<ThreadState> threads,
    Extremes extremes,
    DeformedEar shape) {
  /** Keeps its own copy of the list. */
  public StepResult {
    threads = List.copyOf(threads);
  }

  /** The same state, ended otherwise. */
  StepResult with(StepOutcome other) {
    return new StepResult(label, operation, other, measures, threads, extremes, shape);
  }
}
