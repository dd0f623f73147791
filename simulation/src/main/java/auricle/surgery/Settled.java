package auricle.surgery;

import auricle.equilibrium.LoadPath;
import auricle.equilibrium.PathEvent;
import auricle.numerics.NewtonResult;
import auricle.numerics.Outcome;
import java.util.List;

/**
 * How an attempt to come to rest ended.
 *
 * @param outcome converged, stalled, diverged or cancelled
 * @param words the same in words
 * @param iterations Newton iterations, of all attempts
 * @param residual_n largest residual force at the end, N
 * @param tolerance_n what it had to come below, N
 * @param events snaps on the way, in words
 */
public record Settled(
    Outcome outcome,
    String words,
    int iterations,
    double residual_n,
    double tolerance_n,
    List<String> events) {
  /** Keeps its own copy of the events. */
  public Settled {
    events = List.copyOf(events);
  }

  /** Whether forces balance. */
  public boolean converged() {
    return outcome == Outcome.CONVERGED;
  }

  static Settled of(NewtonResult r) {
    return new Settled(
        r.outcome(), r.reason(), r.iterations().size(), r.residual(), r.tolerance(), List.of());
  }

  static Settled of(LoadPath path, int iterations) {
    NewtonResult last = path.states().isEmpty() ? null : path.last().solution();
    return new Settled(
        path.outcome(),
        path.reason(),
        iterations,
        last == null ? Double.NaN : last.residual(),
        last == null ? Double.NaN : last.tolerance(),
        path.events().stream().map(PathEvent::words).toList());
  }

  /** The same with the iterations and events of what went before. */
  Settled after(Settled before) {
    List<String> all =
        java.util.stream.Stream.concat(before.events.stream(), events.stream()).toList();
    return new Settled(
        outcome, words, before.iterations + iterations, residual_n, tolerance_n, all);
  }
}
