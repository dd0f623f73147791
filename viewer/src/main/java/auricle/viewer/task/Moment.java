package auricle.viewer.task;

import auricle.measurement.Measures;
import auricle.rehearsal.StepOutcome;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The ear at one point of its course: before, after a step, or a time after the operation.
 *
 * @param label as shown: "before", the name of the step, "3 months"
 * @param days since the operation; 0 for before and for steps
 * @param healed whether it lies after the operation
 * @param surface the shape
 * @param lines landmark lines by name
 * @param measures what is measured on it
 * @param threads that are in it
 * @param outcome whether it is a state of rest, in words
 * @param released measurements if all threads were cut then; empty where that is not known
 */
public record Moment(
    String label,
    double days,
    boolean healed,
    EarSurface surface,
    Map<String, List<Spot>> lines,
    Measures measures,
    List<ThreadState> threads,
    StepOutcome outcome,
    Optional<Measures> released) {
  /** Keeps its own copies. */
  public Moment {
    lines = Map.copyOf(lines);
    threads = List.copyOf(threads);
  }

  /** A landmark line; empty if there is none of that name. */
  public List<Spot> line(String name) {
    return lines.getOrDefault(name, List.of());
  }
}
