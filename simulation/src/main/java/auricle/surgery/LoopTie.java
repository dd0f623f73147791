package auricle.surgery;

import auricle.material.ThreadRow;
import auricle.plan.Tie;
import java.util.List;
import java.util.Optional;

/**
 * Ties a suture: to a gap, gradually from its present length (slack if it is shorter than that
 * already), or at a tension, after which it keeps the length of thread that it then has. A tension
 * that the knot or a bite does not bear leaves nothing tied: the ear springs back to where it was.
 */
final class LoopTie implements Change {
  /** Length of a thread that let go over its way, so that it never pulls again. */
  private static final double LOOSE = 10;

  private final BodyThread thread;

  /** How the thread is tied, or will be; another after a turn. */
  private Tie tie;

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
    double tension = tie.dose().value();
    return thread
        .givesWay(tension)
        .map(why -> letGo(body, why))
        .orElseGet(() -> body.pull(thread, tension, this::shut, solving));
  }

  /** Length of thread in a loop whose bites are as near each other as the thread is thick. */
  private double shut(double[] u) {
    return length.of(thread.row().map(ThreadRow::diameter_mm).orElse(0.0), u);
  }

  /** The thread stays in the tissue, loose. */
  private Settled letGo(ShellBody body, String why) {
    thread.thread().tieToLength(LOOSE * thread.thread().length(body.unknowns()));
    return Settled.asBefore(why);
  }

  private Settled tie(ShellBody body, double gap_mm, Solving solving) {
    return body.tie(thread, length.of(gap_mm, body.unknowns()), solving);
  }

  /**
   * Ties a loop that is tied to a gap to another, from the present state: it gets longer or shorter
   * by what the gaps make of difference.
   */
  Settled turn(ShellBody body, Tie.Gap to, Solving solving) {
    double[] u = body.unknowns();
    double before = length.of(((Tie.Gap) tie).gap_mm(), u);
    double after = length.of(to.gap_mm(), u);
    double tied = thread.restLength_mm().orElse(before);
    Settled settled = body.tie(thread, tied + after - before, solving);
    tie = settled.converged() ? to : tie;
    return settled;
  }

  /** Ties to the length of the other loop, plus what gaps and bites make of difference. */
  @Override
  public void tieAs(Change other, double[] u) {
    if (other instanceof LoopTie loop) {
      lengthAfter(loop, u).ifPresent(rest -> thread.thread().tieToLength(rest));
    }
  }

  /** The length of the other loop, plus what gaps and bites make of difference; none for pulls. */
  Optional<Double> lengthAfter(LoopTie other, double[] u) {
    if (tie instanceof Tie.Gap here && other.tie instanceof Tie.Gap there) {
      double difference = length.of(here.gap_mm(), u) - other.length.of(there.gap_mm(), u);
      return other.thread.restLength_mm().map(rest -> rest + difference);
    }
    return Optional.empty();
  }

  /** Stretches through its bites as the other does through those of its own. */
  @Override
  public void stretchAs(Change other, double[] u) {
    if (other instanceof LoopTie loop) {
      double share = thread.thread().length(u) / loop.thread.thread().length(u);
      loop.thread.restLength_mm().ifPresent(rest -> thread.thread().tieToLength(share * rest));
    }
  }

  /** Whether its length of thread does not follow from that of the other, but from a pull. */
  boolean newlyKnotted(Change other) {
    return !(tie instanceof Tie.Gap && other instanceof LoopTie l && l.tie instanceof Tie.Gap);
  }

  /**
   * Leads a body whose loop is tied about as it should be to where it is knotted as it should.
   *
   * @return its length of thread, mm, then; none if it does not come to rest
   */
  Optional<Double> knot(ShellBody body, Solving solving) {
    boolean there =
        tie instanceof Tie.Tension t && body.adjust(thread, t.tension_n(), solving).isPresent();
    return there || make(body, solving).converged() ? thread.restLength_mm() : Optional.empty();
  }

  /**
   * Leads to a length of thread, mm.
   *
   * @return none if it has that length already
   */
  Optional<Settled> tieTo(double rest_mm, ShellBody body, Solving solving) {
    boolean there = thread.restLength_mm().equals(Optional.of(rest_mm));
    return there ? Optional.empty() : Optional.of(body.tie(thread, rest_mm, solving));
  }

  /** Gives the loop a length of thread, mm, wherever the body is. */
  void keep(double rest_mm) {
    thread.thread().tieToLength(rest_mm);
  }
}
