package auricle.healing;

import auricle.numerics.Outcome;
import java.util.List;

/** Counts the steps in time of a run, and the iterations that they took. */
final class StepTally {
  private int taken;
  private int rejected;
  private int iterations;

  /** Another step was taken. */
  void took() {
    taken++;
  }

  /** A step is tried again, shorter. */
  void rejected() {
    rejected++;
  }

  /** Newton iterations were spent. */
  void spent(int more) {
    iterations += more;
  }

  /** Another run goes on from this one. */
  void add(TimeResult run) {
    taken += run.steps();
    rejected += run.rejected();
    iterations += run.iterations();
  }

  /** Steps tried so far. */
  int tried() {
    return taken + rejected;
  }

  /** How the run counted here ended. */
  TimeResult result(Outcome outcome, String reason, List<TimeEvent> events) {
    return new TimeResult(outcome, reason, taken, rejected, iterations, events);
  }
}
