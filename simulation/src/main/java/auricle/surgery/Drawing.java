package auricle.surgery;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Outcome;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Draws a thread in, length by length, until it pulls at a tension. Under a given pull a body runs
 * away where it softens; under a given length it mostly does not, and the first length at which the
 * thread pulls as it should is where a pull that is raised gently leads. Where a given length does
 * not hold the body either, it snaps, and what it snaps to is drawn on. After many snaps the thread
 * is left to the whole tension at once and runs through.
 *
 * <p>There need not be such a length: when the bites meet, the loop is shut, and what is pulled
 * beyond presses the tissue within the loop together and moves nothing more. The thread is knotted
 * there, and pulls by what the body resists.
 */
final class Drawing {
  /** Share of the tension to which it is met. */
  private static final double MET = 1e-6;

  /** Iterations after which it is given up. */
  private static final int MOST_ITERATIONS = 300;

  /** Strides shorter than this part of what could be gone at once lead nowhere. */
  private static final double SMALLEST_PART = 1 / 64.0;

  /** The part after a snap: the other shape need not be a narrow one. */
  private static final double AFTER_SNAP = 1 / 4.0;

  /** Share by which a loop may be longer than one that is shut, and count as shut. */
  private static final double SHUT = 0.01;

  private final TotalEnergy energy;
  private final RestFinder finder;
  private final BodyThread thread;
  private final double tension;
  private final ToDoubleFunction<double[]> shut;
  private final Solving exactly;
  private final Solving passing;

  /** Part of what could be gone at once that is gone; less after a failure. */
  private double part = 1;

  /** The most that the thread has pulled on the way, N. */
  private double most;

  /**
   * @param thread tied to a length, in a body at rest
   * @param tension_n to which it is to come
   * @param shut length of thread, mm, at which the bites meet, by the unknowns
   */
  Drawing(
      TotalEnergy energy,
      RestFinder finder,
      BodyThread thread,
      double tension_n,
      ToDoubleFunction<double[]> shut,
      Solving solving) {
    this.energy = energy;
    this.finder = finder;
    this.thread = thread;
    tension = tension_n;
    this.shut = shut;
    exactly = solving;
    passing = solving.passing();
  }

  /** Leads the body to where the thread pulls at the tension, or is shut. */
  Settled settle() {
    Settled settled = Settled.untouched();
    while (hopeful(settled)) {
      Tightening here = new Tightening(energy, finder.point(), thread);
      double wanted = here.lengthFor(tension);
      double least = Math.min(rest(), shut.applyAsDouble(energy.unknowns()));
      double next = Math.max(least, here.lengthTowards(tension, part));
      boolean last = next == wanted || next == least;
      Settled drawn = drawn(next, last ? exactly : passing);
      settled = drawn.after(settled);
      most = Math.max(most, pull());
      if (last && drawn.converged() && Math.abs(pull() - tension) <= MET * tension) {
        return settled;
      }
      if (last && drawn.converged() && pull() < tension && isShut()) {
        return shut(settled);
      }
    }
    return settled.outcome() == Outcome.CANCELLED ? settled : runThrough(settled);
  }

  private boolean hopeful(Settled settled) {
    return settled.outcome() != Outcome.CANCELLED
        && settled.iterations() < MOST_ITERATIONS
        && part >= SMALLEST_PART;
  }

  private Settled drawn(double restLength_mm, Solving solving) {
    ThreadTie tie = ThreadTie.toLength(energy, finder, thread, rest(), restLength_mm);
    Settled drawn = finder.findAtOnce(tie, solving);
    part = drawn.converged() ? Math.min(1, 2 * part) : part / 4;
    if (part >= SMALLEST_PART || drawn.outcome() == Outcome.CANCELLED) {
      return drawn;
    }
    Settled snapped = finder.snap(tie, exactly);
    part = snapped.converged() ? AFTER_SNAP : part;
    return snapped.telling(snapped.events().isEmpty() ? List.of() : snap()).after(drawn);
  }

  private List<String> snap() {
    return List.of(
        words(
            "drawn in to %.1f mm, the ear lost the shape that it stood in and snapped to another",
            rest()));
  }

  private boolean isShut() {
    return rest() <= (1 + SHUT) * shut.applyAsDouble(energy.unknowns());
  }

  private Settled shut(Settled settled) {
    return settled.noting(
        words(
            "asked to pull at %.2f N; its bites meet before, where the ear resists with %.2f N: the loop is knotted shut and pulls at that",
            tension, pull()));
  }

  /**
   * Lets the thread run through under the whole tension, as a hand that pulls on would, from snap
   * to snap; of no use where its bites would go through each other on the way.
   */
  private Settled runThrough(Settled settled) {
    double[] before = energy.save();
    double length = rest();
    ThreadTie pulling = ThreadTie.toTension(energy, finder, thread, pull(), tension);
    Settled pulled = finder.snap(pulling, exactly);
    thread.thread().knot(energy.unknowns());
    finder.forget();
    if (pulled.converged() && !isShut()) {
      return pulled.telling(List.of(ranThrough())).after(settled);
    }
    energy.restore(before);
    thread.thread().tieToLength(length);
    Settled tried = pulled.after(settled);
    return pulled.outcome() == Outcome.CANCELLED ? tried : notBorne(tried);
  }

  private String ranThrough() {
    return words(
        "pulled on at %.2f N, the ear lost the shape that it stood in, and the thread ran through to a loop of %.1f mm",
        tension, rest());
  }

  private Settled notBorne(Settled settled) {
    return settled.ended(
        Outcome.STALLED,
        words(
            "no rest at %.2f N; drawn in bit by bit, the thread pulled at %.2f N at most, and after %d iterations no rest was found beyond a loop of %.1f mm (shut: %.1f mm)",
            tension, most, settled.iterations(), rest(), shut.applyAsDouble(energy.unknowns())));
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private double rest() {
    return thread.restLength_mm().orElse(0.0);
  }

  private double pull() {
    return thread.thread().tension(energy.unknowns());
  }
}
