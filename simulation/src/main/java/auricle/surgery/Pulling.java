package auricle.surgery;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Outcome;
import java.util.function.ToDoubleFunction;

/**
 * Pulls a thread to a tension and knots it there: at once, in strides of tension, where that leads
 * through stable shapes; else by drawing it in from the last rest on that way.
 */
final class Pulling {
  private final TotalEnergy energy;
  private final RestFinder finder;
  private final BodyThread thread;
  private final Solving solving;

  Pulling(TotalEnergy energy, RestFinder finder, BodyThread thread, Solving solving) {
    this.energy = energy;
    this.finder = finder;
    this.thread = thread;
    this.solving = solving;
  }

  /**
   * @param shut length of thread, mm, at which its bites meet, by the unknowns
   */
  Settled to(double tension_n, ToDoubleFunction<double[]> shut) {
    double from = thread.thread().tension(energy.unknowns());
    ThreadTie pull = ThreadTie.toTension(energy, finder, thread, from, tension_n);
    Settled pulled = finder.findAtOnce(pull, solving);
    thread.thread().knot(energy.unknowns());
    finder.forget();
    boolean over = pulled.converged() || pulled.outcome() == Outcome.CANCELLED;
    return over ? pulled : drawn(tension_n, shut).after(pulled);
  }

  private Settled drawn(double tension_n, ToDoubleFunction<double[]> shut) {
    return new Drawing(energy, finder, thread, tension_n, shut, solving).settle();
  }
}
