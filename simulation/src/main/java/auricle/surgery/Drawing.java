package auricle.surgery;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Outcome;
import java.util.function.Function;

/**
 * Draws a thread in, length by length, until it pulls at a tension. Under a given pull a body runs
 * away where it softens; under a given length it mostly does not, and the first length at which the
 * thread pulls as it should is where a pull that is raised gently leads.
 */
final class Drawing {
  /** Share of the tension to which it is met. */
  private static final double MET = 1e-6;

  /** Iterations after which it is given up. */
  private static final int MOST_ITERATIONS = 150;

  /** Share of its length that a thread keeps at least. */
  private static final double SHORTEST = 0.02;

  /** Strides shorter than this part of what could be gone at once lead nowhere. */
  private static final double SMALLEST_PART = 1 / 64.0;

  private final TotalEnergy energy;
  private final RestFinder finder;
  private final Function<BodyThread, Tightening> tightening;
  private final BodyThread thread;
  private final double tension;
  private final Solving exactly;
  private final Solving passing;

  /** Part of what could be gone at once that is gone; less after a failure. */
  private double part = 1;

  /** The most that the thread has pulled on the way, N. */
  private double most;

  Drawing(
      TotalEnergy energy,
      RestFinder finder,
      Function<BodyThread, Tightening> tightening,
      BodyThread thread,
      double tension_n,
      Solving solving) {
    this.energy = energy;
    this.finder = finder;
    this.tightening = tightening;
    this.thread = thread;
    tension = tension_n;
    exactly = solving;
    passing = solving.passing();
  }

  /** Leads a body at rest, the thread tied to a length, to where it pulls at the tension. */
  Settled settle() {
    double shortest = SHORTEST * rest();
    Settled settled = Settled.untouched();
    while (rest() > shortest && hopeful(settled)) {
      Tightening here = tightening.apply(thread);
      double wanted = here.lengthFor(tension);
      double next = Math.max(shortest, here.lengthTowards(tension, part));
      boolean last = next == wanted;
      Settled drawn = drawn(next, last ? exactly : passing);
      settled = drawn.after(settled);
      part = drawn.converged() ? Math.min(1, 2 * part) : part / 4;
      most = Math.max(most, pull());
      if (last && drawn.converged() && Math.abs(pull() - tension) <= MET * tension) {
        return settled;
      }
    }
    return settled.outcome() == Outcome.CANCELLED ? settled : notBorne(settled);
  }

  private boolean hopeful(Settled settled) {
    return settled.outcome() != Outcome.CANCELLED
        && settled.iterations() < MOST_ITERATIONS
        && part >= SMALLEST_PART
        && !finder.crumpled();
  }

  private Settled drawn(double restLength_mm, Solving solving) {
    return finder.findAtOnce(
        new ThreadTie(energy, tightening, thread, false, rest(), restLength_mm), solving);
  }

  private Settled notBorne(Settled settled) {
    String why = finder.crumpled() ? "the sheet crumples" : "it gives way, or its bites meet";
    return settled.ended(
        Outcome.STALLED,
        "%s: no rest at %.2f N; drawn in bit by bit, the thread pulled at %.2f N at most, then %s"
            .formatted(thread.name(), tension, most, why));
  }

  private double rest() {
    return thread.restLength_mm().orElse(0.0);
  }

  private double pull() {
    return thread.thread().tension(energy.unknowns());
  }
}
