package auricle.surgery;

import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Leads a body from rest to rest under a change of its energy: at once if that leads through stable
 * shapes, or after an unstable start to about where it was expected; else over a half, a quarter,
 * an eighth of the change; and where that does not help either, the shape that it stood in is lost:
 * it snaps ({@link Snap}) to another, and is led on from there.
 */
final class RestFinder {
  /** Iterations after which an attempt is given up for a shorter one. */
  private static final int QUICK = 25;

  /** Iterations within which the stiffness has to be positive definite again. */
  private static final int OVERSHOOT = 3;

  /** The same while every step lowers the energy: a far start takes its turns one by one. */
  private static final int DESCENT = 6;

  /** How often what is asked for at once is halved. */
  private static final int MOST_HALVINGS = 3;

  /** Attempts lost since the last snap after which the next one lost is taken for a snap. */
  private static final int MOST_LOST = 6;

  /** Iterations of one change, all attempts together, after which it is given up. */
  private static final int MOST = 400;

  /** What a correction of a foreseen place has to leave of the residual at most. */
  private static final double CORRECTED = 0.3;

  /** The same where nothing is foreseen but by that correction. */
  private static final double NEARER = 0.5;

  private final TotalEnergy energy;
  private final NewtonMinimiser minimiser;

  /** Whether the solver holds the factor of the present state. */
  private boolean factored;

  /** A change that can be made in part. */
  interface Change {
    /** Where the body is expected to go under a share of it, free unknowns; not yet in force. */
    double[] motion(double share);

    /** Puts a share of it in force, 0 … 1. */
    void put(double share);

    /** Puts all of it in force, as it stays. */
    void end();
  }

  RestFinder(TotalEnergy energy) {
    this.energy = energy;
    minimiser = new NewtonMinimiser(energy);
  }

  /** To be called after the state or the energy has been changed by others. */
  void forget() {
    factored = false;
  }

  /** The solver's memory. */
  Linearisation memory() {
    return minimiser.point();
  }

  /** The energy linearised and factorised at the present state. */
  Linearisation point() {
    Linearisation point = minimiser.point();
    if (!factored) {
      point.evaluate(energy.free());
      point.factorize(false);
    }
    return point;
  }

  /** The present state, if it is known to be at rest under the energy as it is. */
  Optional<Settled> resting(Solving solving) {
    if (!factored) {
      return Optional.empty();
    }
    Linearisation point = minimiser.point();
    double tolerance = point.allowed(solving.settings().newton().residualTolerance());
    return Optional.of(
        new Settled(
            Outcome.CONVERGED,
            "at rest: nothing pulls that did not before",
            0,
            point.residual(),
            Math.max(tolerance, point.residual()),
            List.of()));
  }

  /** Makes a change and leads the body to rest; it ends in force even on failure. */
  Settled find(Change change, Solving solving) {
    Counting counting = new Counting(solving.monitor());
    Settled settled = lead(change, solving, counting);
    change.end();
    return counting.judge(settled);
  }

  /**
   * Makes a change as far as attempts lead without being shortened; what is not reached is not in
   * force.
   */
  Settled findAtOnce(Change change, Solving solving) {
    Counting counting = new Counting(solving.monitor());
    Settled settled = Settled.untouched();
    for (double done = 0; done < 1 && settled.converged() && !counting.ended(); ) {
      double[] whole = change.motion(1);
      double next = Stride.next(done, within(whole, done));
      settled = attempt(change, whole, done, next, solving, counting).after(settled);
      done = next;
    }
    return counting.judge(settled);
  }

  /**
   * Leads the body to rest after a little change of the energy that it was at rest under, made
   * already: from where the forces of the change lead with the stiffness before it.
   *
   * @return none where that is not much nearer to rest or leads elsewhere; the body is where it was
   */
  Optional<Settled> findNearby(Solving solving) {
    Counting counting = new Counting(solving.monitor());
    double[] saved = energy.save();
    double[] x = energy.free();
    if (correct(x, step -> Stride.gentle(energy, step), NEARER)) {
      solving.foreseen().run();
      NewtonSettings newton = solving.settings().newton().withIterations(QUICK);
      NewtonResult result =
          minimiser.minimise(x, newton, n -> counting.proceed(energy.loadFactor(), n));
      factored = result.converged() && !result.metNegativeCurvature();
      if (factored || counting.ended()) {
        return Optional.of(counting.judge(Settled.of(result, factored)));
      }
    }
    energy.restore(saved);
    return Optional.empty();
  }

  /**
   * Makes a change at once, wherever that leads the body; not in force if that is nowhere. Events
   * say how far it went.
   */
  Settled snap(Change change, Solving solving) {
    Counting counting = new Counting(solving.monitor());
    return counting.judge(snap(change, 0, 1, solving, counting));
  }

  private Settled lead(Change change, Solving solving, Counting counting) {
    Settled settled = Settled.untouched();
    double done = 0;
    int halvings = 0;
    int lost = 0;
    while (done < 1 && !counting.ended()) {
      double[] whole = change.motion(1);
      double next = Stride.next(done, within(whole, done) / (1 << halvings));
      settled = attempt(change, whole, done, next, solving, counting).after(settled);
      lost += settled.converged() ? 0 : 1;
      if (!settled.converged() && (halvings == MOST_HALVINGS || lost > MOST_LOST)) {
        settled = snap(change, done, next, solving, counting).after(settled);
        lost = 0;
        if (!settled.converged()) {
          return settled;
        }
      }
      halvings = settled.converged() ? Math.max(0, halvings - 1) : halvings + 1;
      done = settled.converged() ? next : done;
    }
    return settled;
  }

  private Settled snap(Change change, double from, double to, Solving solving, Counting counting) {
    double[] saved = energy.save();
    int before = counting.count();
    change.put(to);
    Snap snap = new Snap(energy, minimiser);
    NewtonSettings newton = solving.settings().newton().withIterations(QUICK);
    NewtonResult result = snap.go(newton, n -> counting.proceed(energy.loadFactor(), n));
    factored = result.converged();
    if (!factored) {
      energy.restore(saved);
      change.put(from);
    }
    return Settled.of(result, counting.count() - before, snap.words(to));
  }

  /** Share of a change that may be made at once from where it is. */
  private double within(double[] whole, double done) {
    return (1 - done) * Stride.share(energy, whole);
  }

  /**
   * @param whole motion expected if all of the change were put in force from here
   */
  private Settled attempt(
      Change change, double[] whole, double from, double to, Solving solving, Counting counting) {
    double[] saved = energy.save();
    double[] motion = to < 1 ? change.motion(to) : whole;
    boolean gentle = factored && Stride.gentle(energy, motion);
    factored = false;
    change.put(to);
    double[] x = energy.free();
    Excursion way = new Excursion(energy, x, motion);
    if (gentle && !correct(x, step -> true, CORRECTED)) {
      energy.restore(saved);
      change.put(to);
      x = energy.free();
      way = new Excursion(energy, x, motion);
    } else if (gentle && to == 1) {
      solving.foreseen().run();
    }
    NewtonSettings exact = solving.settings().newton().withIterations(QUICK);
    NewtonSettings newton = to < 1 ? exact.forPassing() : exact;
    NewtonResult result =
        minimiser.minimise(x, newton, n -> hopeful(n) && counting.proceed(energy.loadFactor(), n));
    factored = result.converged() && (!result.metNegativeCurvature() || way.asExpected(energy));
    if (!factored) {
      energy.restore(saved);
      change.put(from);
    }
    boolean hopeless = result.outcome() == Outcome.CANCELLED && !counting.ended();
    Settled settled = Settled.of(result, factored);
    return hopeless
        ? settled.ended(Outcome.STALLED, "unstable shapes that the iteration does not leave")
        : settled;
  }

  /**
   * Corrects the place that was foreseen by the forces there, with the factor of the place before:
   * after a gentle change that takes nearly all of the error away, at a fifth of the price of an
   * iteration with a factor of its own.
   *
   * @param x free unknowns; moved
   * @param likely whether a step is one that may be taken
   * @param most share of the residual that may be left
   * @return whether the forces have become much less
   */
  private boolean correct(double[] x, Predicate<double[]> likely, double most) {
    Linearisation point = minimiser.point();
    if (!point.evaluateNearby(x) || !point.kept()) {
      return false;
    }
    double before = point.residual();
    double[] step = new double[x.length];
    point.solve(point.gradient(), step);
    if (!likely.test(step)) {
      return false;
    }
    for (int i = 0; i < x.length; i++) {
      x[i] -= step[i];
    }
    return point.evaluateNearby(x) && point.kept() && point.residual() <= most * before;
  }

  /** A start that overshoots may be unstable, but the iteration has to come back soon. */
  private static boolean hopeful(NewtonIteration n) {
    return n.negativePivots() == 0 || n.iteration() < (n.accepted() ? DESCENT : OVERSHOOT);
  }

  /** Counts the iterations of all attempts, and ends them when there are too many. */
  private final class Counting implements StepMonitor {
    private final StepMonitor monitor;
    private int count;
    private boolean cancelled;

    Counting(StepMonitor monitor) {
      this.monitor = monitor;
    }

    int count() {
      return count;
    }

    boolean ended() {
      return cancelled || count >= MOST;
    }

    @Override
    public boolean proceed(double loadFactor, NewtonIteration iteration) {
      count++;
      cancelled |= !monitor.proceed(loadFactor, iteration);
      return !ended();
    }

    /** The same, with what this had to do with it. */
    Settled judge(Settled settled) {
      if (settled.converged() || cancelled || !ended()) {
        return settled;
      }
      String why =
          "given up after %d iterations, far from rest: too much is asked of it, or it leads from snap to snap";
      return settled.ended(Outcome.STALLED, why.formatted(count));
    }
  }
}
