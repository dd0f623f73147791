package auricle.surgery;

import auricle.numerics.NewtonResult;
import auricle.numerics.Outcome;
import java.util.List;
import java.util.stream.Stream;

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

  /** Nothing done yet. */
  public static Settled untouched() {
    return new Settled(Outcome.CONVERGED, "untouched", 0, 0, 0, List.of());
  }

  /** At rest where it was, and why. */
  static Settled asBefore(String why) {
    return new Settled(Outcome.CONVERGED, "at rest as before: " + why, 0, 0, 0, List.of(why));
  }

  /**
   * @param stable whether it led through stable shapes alone
   */
  static Settled of(NewtonResult r, boolean stable) {
    Outcome outcome = r.converged() && !stable ? Outcome.STALLED : r.outcome();
    return new Settled(
        outcome, r.reason(), r.iterations().size(), r.residual(), r.tolerance(), List.of());
  }

  /** The same, ended otherwise. */
  Settled ended(Outcome other, String otherWords) {
    return new Settled(other, otherWords, iterations, residual_n, tolerance_n, events);
  }

  /** The same with other events. */
  Settled telling(List<String> otherEvents) {
    return new Settled(outcome, words, iterations, residual_n, tolerance_n, otherEvents);
  }

  /** The same with one more event, said in words too. */
  Settled noting(String event) {
    List<String> all = Stream.concat(events.stream(), Stream.of(event)).toList();
    return new Settled(outcome, words + "; " + event, iterations, residual_n, tolerance_n, all);
  }

  /**
   * @param iterations of all that led there
   * @param events on the way, if it led to rest
   */
  static Settled of(NewtonResult r, int iterations, List<String> events) {
    return new Settled(
        r.outcome(),
        r.reason(),
        iterations,
        r.residual(),
        r.tolerance(),
        r.converged() ? events : List.of());
  }

  /** The same with the iterations and events of what went before. */
  Settled after(Settled before) {
    List<String> all =
        java.util.stream.Stream.concat(before.events.stream(), events.stream()).toList();
    return new Settled(
        outcome, words, before.iterations + iterations, residual_n, tolerance_n, all);
  }
}
