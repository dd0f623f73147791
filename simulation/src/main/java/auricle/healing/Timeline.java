package auricle.healing;

import auricle.numerics.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * The ear over time.
 *
 * @param moments at the times asked for, the first as tied; as far as the run came
 * @param outcome converged: every moment is at rest
 * @param words the same in words
 * @param steps steps in time taken
 * @param rejected steps tried again with shorter ones
 * @param iterations Newton iterations of all of them
 * @param bands spread of the figures by the spread of the tissue, if asked for
 */
public record Timeline(
    List<MomentResult> moments,
    Outcome outcome,
    String words,
    int steps,
    int rejected,
    int iterations,
    Optional<Bands> bands) {
  /** Correction below which no loss is stated, mm; our own convention. */
  public static final double LEAST_CORRECTION_MM = 1;

  /** Tied, 1 day, 1 week, 1, 3, 6 and 12 months, in days. */
  public static final List<Double> USUAL_DAYS =
      List.of(0.0, 1.0, 7.0, 30.4375, 91.3125, 182.625, 365.25);

  /** Keeps its own copy of the moments. */
  public Timeline {
    moments = List.copyOf(moments);
  }

  /** Nothing to show: the ear did not come to rest under the plan. */
  public static Timeline none(Outcome outcome, String words) {
    return new Timeline(List.of(), outcome, words, 0, 0, 0, Optional.empty());
  }

  /** The moments that a run came to, without bands. */
  static Timeline of(List<MomentResult> moments, TimeResult run) {
    return new Timeline(
        moments,
        run.outcome(),
        run.reason(),
        run.steps(),
        run.rejected(),
        run.iterations(),
        Optional.empty());
  }

  /** Whether it was ended on request. */
  public boolean cancelled() {
    return outcome == Outcome.CANCELLED;
  }

  /** Whether every moment asked for is there, at rest. */
  public boolean converged() {
    return outcome == Outcome.CONVERGED;
  }

  /** The last moment. */
  public MomentResult last() {
    return moments.get(moments.size() - 1);
  }

  /** The same with bands. */
  public Timeline with(Bands others) {
    return new Timeline(moments, outcome, words, steps, rejected, iterations, Optional.of(others));
  }
}
