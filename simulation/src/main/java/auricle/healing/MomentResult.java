package auricle.healing;

import auricle.anatomy.Level;
import auricle.measurement.Measures;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The ear at a time after the operation.
 *
 * @param days since it was tied
 * @param label the same in words, "tied" for the first
 * @param measures all measurements
 * @param threads every suture that was tied
 * @param loss share of the correction that is lost by level, (p(t) − p(tied)) / (p(before) −
 *     p(tied)); a level that was not brought back by {@value Timeline#LEAST_CORRECTION_MM} mm or
 *     more is left out
 * @param released measurements if all threads were cut now; none if there are no threads or no rest
 *     was found without them
 * @param state the shape, for drawing
 * @param events what happened since the moment before, in words
 */
public record MomentResult(
    double days,
    String label,
    Measures measures,
    List<ThreadAtMoment> threads,
    Map<Level, Double> loss,
    Optional<Measures> released,
    EarState state,
    List<String> events) {
  /** Keeps its own copies. */
  public MomentResult {
    threads = List.copyOf(threads);
    loss = Map.copyOf(loss);
    events = List.copyOf(events);
  }
}
