package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.energy.ShellState;
import auricle.equilibrium.EquilibriumState;
import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.PathEvent;
import auricle.equilibrium.PathFollowing;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Large displacements: follows the equilibrium and evaluates probes at every state asked for. */
final class StepRun implements StepMonitor {
  /** Turn of a prescribed director in one step, rad. */
  private static final double LARGEST_TURN = 0.5;

  private final ShellProblem problem;
  private final AnalysisWatcher watcher;
  private final TurnTracker turns;
  private final ShellState shell;
  private final ShellState seen;
  private final TurnAlongEdges bends;
  private final List<StepResult> steps = new ArrayList<>();
  private boolean everyState;
  private int states;

  StepRun(ShellProblem problem, AnalysisWatcher watcher) {
    this.problem = problem;
    this.watcher = watcher;
    this.turns = new TurnTracker(problem.directors(), problem.probes().turns(), problem.start());
    this.shell = problem.state();
    this.seen = problem.growing() ? problem.seen() : shell;
    this.bends = new TurnAlongEdges(problem.topology(), problem.directors());
  }

  /** At given load factors. */
  Ending loadSteps(SolvePlan.LoadSteps plan) {
    double[] factors = distinct(plan.factors());
    TotalEnergy energy = problem.energy(problem.supports());
    LoadPath path =
        new LoadSteps(energy, settings(plan.limits(), plan.acceptUnstable()), this).run(factors);
    if (path.outcome() != Outcome.CONVERGED && steps.size() < factors.length) {
      fail(factors[steps.size()], path);
    }
    return Ending.of(path);
  }

  /** Along the path, to an end. */
  Ending path(SolvePlan.Path plan) throws BadInputException {
    return path(new PathPlan(problem, plan));
  }

  /** Along the path, to given displacements. */
  Ending path(SolvePlan.DisplacementSteps plan) throws BadInputException {
    return path(new PathPlan(problem, plan));
  }

  private Ending path(PathPlan plan) {
    everyState = plan.everyState();
    TotalEnergy energy = problem.energy(problem.supports());
    LoadPath path =
        new PathFollowing(energy, plan.settings(), this).run(plan.end(), plan.outputs());
    boolean ranItsSteps =
        plan.open() && path.outcome() == Outcome.STALLED && states > plan.settings().mostSteps();
    if (ranItsSteps) {
      return new Ending(Outcome.CONVERGED, "followed for the steps asked for", Ending.words(path));
    }
    boolean missed = !plan.everyState() && steps.size() < plan.outputs().size();
    if (path.outcome() != Outcome.CONVERGED || missed) {
      fail(Double.NaN, path);
    }
    return missed && path.outcome() == Outcome.CONVERGED
        ? new Ending(
            Outcome.STALLED,
            "not every displacement was reached: " + path.failures(),
            Ending.words(path))
        : Ending.of(path);
  }

  /**
   * How a run ended.
   *
   * @param outcome converged if everything asked for was reached
   * @param reason in words
   * @param remarks snaps and limit points
   */
  record Ending(Outcome outcome, String reason, List<String> remarks) {
    static Ending of(LoadPath path) {
      return new Ending(path.outcome(), path.reason(), words(path));
    }

    static List<String> words(LoadPath path) {
      return path.events().stream().map(PathEvent::words).toList();
    }
  }

  private StepSettings settings(SolvePlan.Limits limits, boolean acceptUnstable) {
    NewtonSettings newton =
        NewtonSettings.USUAL
            .acceptingUnstable(acceptUnstable)
            .withResidualTolerance(limits.tolerance())
            .withIterations(limits.mostIterations());
    double largest =
        problem.supportPlan().largestTurn() > 0
            ? LARGEST_TURN / problem.supportPlan().largestTurn()
            : Double.POSITIVE_INFINITY;
    return StepSettings.USUAL.withNewton(newton).withSteps(largest, largest);
  }

  private static double[] distinct(List<Double> factors) {
    double[] all = factors.stream().mapToDouble(f -> f).toArray();
    int kept = 0;
    for (double f : all) {
      if (kept == 0 || all[kept - 1] != f) {
        all[kept++] = f;
      }
    }
    return java.util.Arrays.copyOf(all, kept);
  }

  /** A row for the first load factor that was not reached, without numbers. */
  private void fail(double loadFactor, LoadPath path) {
    List<Double> none = problem.probes().evaluateNothing();
    steps.add(
        new StepResult(
            steps.size() + 1,
            loadFactor,
            false,
            path.outcome().name().toLowerCase(java.util.Locale.ROOT),
            path.reason(),
            none,
            List.of()));
  }

  @Override
  public boolean proceed(double loadFactor, NewtonIteration iteration) {
    watcher.iterated(loadFactor, iteration.iteration(), iteration.residual());
    return !watcher.cancelled();
  }

  @Override
  public void reached(EquilibriumState state) {
    turns.follow(state.unknowns());
    states++;
    if (state.requested() || (everyState && states > 1)) {
      bends.look(state.unknowns(), state.loadFactor());
      EquilibriumView view = new EquilibriumView(problem, state, turns, shell, seen);
      StepResult step =
          new StepResult(
              steps.size() + 1,
              state.loadFactor(),
              state.solution().converged(),
              "converged",
              state.solution().reason(),
              problem.probes().evaluate(view),
              state.solution().iterations());
      steps.add(step);
      watcher.stepped(step, () -> new Snapshots(problem).of(view));
    }
  }

  /** What makes the results doubtful, in words. */
  List<String> doubts() {
    return bends.remarks();
  }

  /** The steps so far, in order. */
  List<StepResult> steps() {
    return steps;
  }
}
