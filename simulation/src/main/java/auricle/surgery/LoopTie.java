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

  /** The same thread through the same bites, to be tied in another way. */
  LoopTie tiedBy(Tie other) {
    return new LoopTie(thread, other, length);
  }

  /** Whether it is the thread of the other, as it lies there. */
  boolean throughTheBitesOf(LoopTie other) {
    return thread == other.thread;
  }

  /** Ties to the length of the other loop, plus what gaps and bites make of difference. */
  @Override
  public void tieAs(Change other, double[] u) {
    if (other instanceof LoopTie loop) {
      loop.thread.restLength_mm().flatMap(tied -> lengthAfter(loop, tied, u)).ifPresent(this::keep);
    }
  }

  /**
   * The length that another loop was tied to, mm, plus what gaps and bites make of difference; none
   * for pulls.
   */
  Optional<Double> lengthAfter(LoopTie other, double tied_mm, double[] u) {
    if (tie instanceof Tie.Gap here && other.tie instanceof Tie.Gap there) {
      double difference = length.of(here.gap_mm(), u) - other.length.of(there.gap_mm(), u);
      return Optional.of(tied_mm + difference);
    }
    return Optional.empty();
  }

  /** Stretches through its bites as another, tied to a length, mm, did through those of its own. */
  void stretchAs(LoopTie other, double tied_mm, double[] u) {
    keep(tied_mm * thread.thread().length(u) / other.thread.thread().length(u));
  }

  /** Whether this is the other with another gap and nothing else. */
  boolean anotherGapAlone(Change other) {
    return other instanceof LoopTie loop && throughTheBitesOf(loop) && !newlyKnotted(other);
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

  /** Leads to a length of thread, mm. */
  Settled tieTo(double rest_mm, ShellBody body, Solving solving) {
    return body.tie(thread, rest_mm, solving);
  }

  /** Length of thread, mm; none if it is not tied. */
  Optional<Double> length_mm() {
    return thread.restLength_mm();
  }

  /** Gives the loop a length of thread, mm, wherever the body is. */
  void keep(double rest_mm) {
    thread.thread().tieToLength(rest_mm);
  }
}
