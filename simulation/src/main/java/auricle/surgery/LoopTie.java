package auricle.surgery;

import auricle.plan.Tie;
import java.util.List;

/**
 * Ties a suture: to a gap, gradually from its present length (slack if it is shorter than that
 * already), or at a tension, after which it keeps the length of thread that it then has.
 */
final class LoopTie implements Change {
  private final BodyThread thread;
  private final Tie tie;
  private final LoopLength length;

  /** Length of thread that a gap makes in a loop. */
  interface LoopLength {
    /**
     * @param gap_mm between the bite lines
     * @param u present unknowns: bites keep their distances
     */
    double of(double gap_mm, double[] u);
  }

  LoopTie(BodyThread thread, Tie tie, LoopLength length) {
    this.thread = thread;
    this.tie = tie;
    this.length = length;
  }

  @Override
  public List<BodyThread> threads() {
    return List.of(thread);
  }

  @Override
  public Settled make(ShellBody body, Solving solving) {
    if (tie instanceof Tie.Gap gap) {
      return tie(body, gap.gap_mm(), solving);
    }
    return body.pull(thread, tie.dose().value(), solving);
  }

  private Settled tie(ShellBody body, double gap_mm, Solving solving) {
    return body.tie(thread, length.of(gap_mm, body.unknowns()), solving);
  }

  /** Ties a loop that is tied to a gap, mm, to another, whatever the plan says. */
  Settled turn(ShellBody body, double from_mm, double to_mm, Solving solving) {
    double[] u = body.unknowns();
    double tied = thread.restLength_mm().orElseGet(() -> length.of(from_mm, u));
    return body.tie(thread, tied + length.of(to_mm, u) - length.of(from_mm, u), solving);
  }

  /**
   * Ties to the length of another loop, plus what the two gaps and bites make of difference at one
   * place.
   *
   * @param u unknowns of both
   */
  void tieAs(LoopTie other, double[] u) {
    if (tie instanceof Tie.Gap here && other.tie instanceof Tie.Gap there) {
      double difference = length.of(here.gap_mm(), u) - other.length.of(there.gap_mm(), u);
      other
          .thread
          .restLength_mm()
          .ifPresent(rest -> thread.thread().tieToLength(rest + difference));
    }
  }
}
