package auricle.equilibrium;

import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Follows a body from rest to rest through a list of load factors.
 *
 * <p>Every requested λ is hit exactly. In between, steps are cut where a solution fails and grow
 * where it comes easily; each starts from an extrapolation of the path. A solution that passed
 * through instability and ended far from where it was expected is a snap: the step is cut until λ
 * of the snap is known to the smallest step, then the state on the other side is taken and
 * reported.
 */
public final class LoadSteps {
  private static final double GROWTH = 2;
  private static final double CUT = 0.35;
  private static final double SNAP_RESOLUTION = 1e-3;

  private final TotalEnergy energy;
  private final StepSettings settings;
  private final StepMonitor monitor;
  private final NewtonMinimiser minimiser;
  private final Predictor predictor;
  private final List<EquilibriumState> states = new ArrayList<>();

  /**
   * A step that cannot be cut any more may take this many times the iterations: a body that snaps
   * far.
   */
  private static final int PATIENCE = 10;

  private final List<PathEvent> events = new ArrayList<>();
  private final List<String> failures = new ArrayList<>();
  private double lambda;
  private double step;
  private double snapStep;
  private int attempts;

  /**
   * @param energy at the λ and the unknowns to begin with; left at the last state at rest
   */
  public LoadSteps(TotalEnergy energy, StepSettings settings, StepMonitor monitor) {
    this(energy, new NewtonMinimiser(energy), settings, monitor);
  }

  /**
   * The same with a solver that has solved for this energy before: what depends on the sparse
   * pattern alone is not done again.
   */
  public LoadSteps(
      TotalEnergy energy, NewtonMinimiser minimiser, StepSettings settings, StepMonitor monitor) {
    this.energy = energy;
    this.minimiser = minimiser;
    this.settings = settings;
    this.monitor = monitor;
    predictor = new Predictor(energy);
  }

  /** The solver with the factor at the last state at rest, for sensitivities. */
  public NewtonMinimiser minimiser() {
    return minimiser;
  }

  /**
   * Goes through the requested load factors in the order given.
   *
   * @param requested λ values; the start itself may be among them, as the first
   */
  public LoadPath run(double... requested) {
    lambda = energy.loadFactor();
    step = settings.first();
    snapStep = snapStep(requested);
    LoadPath cancelled = begin(requested.length > 0 && requested[0] == lambda);
    if (cancelled != null) {
      return cancelled;
    }
    for (double target : requested) {
      LoadPath ended = reach(target);
      if (ended != null) {
        return ended;
      }
    }
    return path(Outcome.CONVERGED, "at rest at every requested load factor");
  }

  private double snapStep(double[] requested) {
    double range = 0;
    for (double target : requested) {
      range = Math.max(range, Math.abs(target - lambda));
    }
    return Math.max(settings.smallest(), SNAP_RESOLUTION * range);
  }

  /** Comes to rest at the start; a body that cannot (held by its load alone) is let be. */
  private @Nullable LoadPath begin(boolean wanted) {
    double[] saved = energy.save();
    StepTrial trial = attempt(lambda, 1);
    if (trial.converged()) {
      accept(trial, lambda, 0, wanted);
      return null;
    }
    energy.restore(saved);
    failures.add(words(lambda, trial.result()));
    boolean fatal = wanted || trial.result().outcome() == Outcome.CANCELLED;
    return fatal ? path(trial.result().outcome(), words(lambda, trial.result())) : null;
  }

  private @Nullable LoadPath reach(double target) {
    while (lambda != target) {
      if (attempts++ >= settings.mostSteps()) {
        return path(
            Outcome.STALLED,
            "%d load steps were not enough; at rest up to load factor %.6g"
                .formatted(settings.mostSteps(), lambda));
      }
      double next = next(target);
      LoadPath ended = tryStep(next, next == target);
      if (ended != null) {
        return ended;
      }
    }
    return null;
  }

  /** The next λ on the way: the target if it is within one step and a little. */
  private double next(double target) {
    double left = Math.abs(target - lambda);
    double length = Math.min(step, settings.largest());
    if (left <= 1.1 * length) {
      return target;
    }
    // two even steps rather than a long one and a sliver
    double even = left < 2 * length ? left / 2 : length;
    return lambda + Math.copySign(even, target - lambda);
  }

  private @Nullable LoadPath tryStep(double next, boolean wanted) {
    double[] saved = energy.save();
    double length = Math.abs(next - lambda);
    boolean shortest = CUT * length < settings.smallest();
    StepTrial trial = attempt(next, shortest ? PATIENCE : 1);
    if (trial.converged() && !(trial.jumped() && length > 1.01 * snapStep)) {
      accept(trial, next, length, wanted);
      return null;
    }
    energy.restore(saved);
    NewtonResult result = trial.result();
    if (trial.converged()) {
      step = Math.max(CUT * length, snapStep);
      return null;
    }
    failures.add(words(next, result));
    if (result.outcome() == Outcome.CANCELLED || shortest) {
      return path(
          result.outcome(),
          "at rest up to load factor %.6g; beyond it: %s".formatted(lambda, words(next, result)));
    }
    step = CUT * length;
    return null;
  }

  private StepTrial attempt(double next, int patience) {
    NewtonSettings newton = settings.newton();
    return new StepTrial(
        energy,
        minimiser,
        next,
        predictor.motion(next - lambda),
        newton.withIterations(patience * newton.mostIterations()),
        monitor);
  }

  private void accept(StepTrial trial, double next, double length, boolean wanted) {
    if (trial.jumped()) {
      events.add(snap(trial, next));
      predictor.forget();
    }
    EquilibriumState state = new EquilibriumState(energy, trial.result(), wanted);
    predictor.learn(minimiser.point(), next - lambda);
    lambda = next;
    states.add(state);
    monitor.reached(state);
    step = nextStep(length, trial.result().iterations().size());
  }

  private double nextStep(double length, int iterations) {
    if (iterations > settings.hard()) {
      return Math.max(length / GROWTH, settings.smallest());
    }
    double growth = iterations > settings.easy() ? 1 : GROWTH;
    return Math.max(step, (iterations > settings.easy() / 2 ? growth : 2 * GROWTH) * length);
  }

  private PathEvent snap(StepTrial trial, double next) {
    String words =
        "between load factor %.6g and %.6g the equilibrium followed was lost; the body snapped to another, up to %.3g mm away"
            .formatted(lambda, next, trial.surprise());
    return new PathEvent(PathEvent.Kind.SNAP, lambda, next, words);
  }

  private static String words(double at, NewtonResult result) {
    return "load factor %.6g: %s".formatted(at, result.reason());
  }

  private LoadPath path(Outcome outcome, String reason) {
    return new LoadPath(outcome, reason, states, events, failures);
  }
}
