package auricle.numerics;

/**
 * Goes down to a minimum from where Newton's method finds none: as a body does that has lost its
 * hold and moves through something viscous. Every step is a minimisation with a drag ({@link
 * Damped}), which is well-posed however unstable the body is, and the value falls from step to
 * step. The drag is lowered where steps come easily and raised where they do not, until Newton's
 * method without drag leads to the end (pseudo-transient continuation: Kelley and Keyes 1998, SIAM
 * J. Numer. Anal. 35:508-523). What counts as an end is what counts there.
 *
 * <p>For one descent.
 */
public final class DampedDescent {
  /** Drag to begin with, as a share of the mean stiffness of single unknowns. */
  private static final double FIRST = 1e-2;

  /** Share of the forces that a step may leave, the drag's among them. */
  private static final double LEFT = 0.1;

  /** Iterations of a step, and how many of them are easy. */
  private static final int MOST = 8;

  private static final int EASY = 4;

  /** Steps that may leave the value above. */
  private static final int RELAXED = 4;

  /** The drag after an easy step, after another, and after none. */
  private static final double EASED = 0.3;

  private static final double LESS = 0.6;
  private static final double MORE = 5;

  /** Easy steps in a row after which the drag is lowered faster. */
  private static final int STREAK = 2;

  /** Steps after which it is given up. */
  private static final int MOST_STEPS = 200;

  /** Iterations after which the end has to be stable. */
  private static final int OVERSHOOT = 3;

  private final NewtonMinimiser plain;
  private final Linearisation point;
  private final Damped damped;
  private final NewtonMinimiser held;
  private final NewtonSettings settings;
  private final NewtonMonitor monitor;
  private boolean ended;
  private double drag;

  /** Easy steps in a row. */
  private int streak;

  /** The end is tried where the drag is no more. */
  private double low = Double.POSITIVE_INFINITY;

  /**
   * @param plain of the function; after a converged descent its point is the solution, factorised
   * @param settings of the end; its number of iterations is that of one trial
   * @param monitor told of every iteration
   */
  public DampedDescent(NewtonMinimiser plain, NewtonSettings settings, NewtonMonitor monitor) {
    this.plain = plain;
    point = plain.point();
    damped = new Damped(point.function());
    held = new NewtonMinimiser(damped);
    this.settings = settings;
    this.monitor = monitor;
  }

  /**
   * Moves x to a minimum.
   *
   * @param x start, length n; overwritten
   * @return of the last trial or step; its table is that of this one alone
   */
  public NewtonResult minimise(double[] x) {
    NewtonResult last = end(x);
    drag = FIRST * stiffness();
    for (int k = 0; k < MOST_STEPS && !last.converged() && !ended; k++) {
      last = step(x);
      if (!ended && drag <= low && near(x)) {
        last = end(x);
        low = EASED * EASED * drag;
      }
    }
    return last;
  }

  /** Whether Newton's method may lead to the end: no negative curvature, or nothing but that. */
  private boolean near(double[] x) {
    point.evaluate(x);
    point.factorize(true);
    return point.negativePivots() == 0
        || point.residual() <= point.allowed(settings.residualTolerance());
  }

  private NewtonResult end(double[] x) {
    NewtonResult end = plain.minimise(x, settings, n -> standing(n) && goesOn(n));
    if (!end.converged()) {
      point.evaluate(x);
    }
    return end;
  }

  private static boolean standing(NewtonIteration n) {
    return n.negativePivots() == 0 || n.iteration() < OVERSHOOT;
  }

  /** One step from the point last evaluated. */
  private NewtonResult step(double[] x) {
    point.evaluate(x);
    double forces = point.residual() / point.function().forceScale();
    double tolerance = Math.max(LEFT * forces, settings.residualTolerance());
    damped.hold(x, drag);
    NewtonSettings loose = new NewtonSettings(tolerance, 1, MOST, RELAXED, 0, false, true);
    NewtonResult step = held.minimise(x, loose, n -> wellPosed(n) && goesOn(n));
    adapt(step.converged(), step.iterations().size());
    return new NewtonResult(
        step.outcome() == Outcome.CONVERGED ? Outcome.STALLED : step.outcome(),
        "still on its way down",
        step.value(),
        point.residual(),
        point.allowed(settings.residualTolerance()),
        step.negativePivots(),
        step.iterations());
  }

  /**
   * Whether a step is worth going on with: where the curvature is negative in spite of the drag, or
   * the iteration had to turn back, there is too little of it, and whatever was gained is kept.
   */
  private static boolean wellPosed(NewtonIteration n) {
    return n.negativePivots() == 0 && n.step() > 0;
  }

  private void adapt(boolean led, int iterations) {
    boolean easy = led && iterations <= EASY;
    streak = easy ? streak + 1 : 0;
    double eased = streak > STREAK ? EASED * EASED : EASED;
    drag *= easy ? eased : led ? LESS : MORE;
  }

  private boolean goesOn(NewtonIteration n) {
    ended |= !monitor.proceed(n);
    return !ended;
  }

  private double stiffness() {
    SmoothFunction function = point.function();
    SymmetricMatrix hessian = point.factor().matrix();
    double sum = 0;
    for (int i = 0; i < function.size(); i++) {
      sum += Math.abs(hessian.diagonal(i)) / (function.unit(i) * function.unit(i));
    }
    return sum / function.size();
  }
}
