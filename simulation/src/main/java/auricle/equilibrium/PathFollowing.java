package auricle.equilibrium;

import auricle.numerics.Linearisation;
import auricle.numerics.NewtonResult;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Follows a path of equilibria, stable or not, through limit points, by arc-length continuation:
 * each state is predicted along the tangent and corrected in the plane across it, with λ free (Riks
 * 1979; Ramm 1981). States at requested levels are corrected to them exactly.
 */
public final class PathFollowing {
  private static final double EASY = 5;

  /** A step beyond the first length that turns the path by more than about 45° is halved. */
  private static final double SHARPEST = 0.7;

  private final TotalEnergy energy;
  private final PathSettings settings;
  private final StepMonitor monitor;
  private final BorderedNewton newton;
  private final List<EquilibriumState> states = new ArrayList<>();
  private final List<String> failures = new ArrayList<>();
  private final TurningPoints turns = new TurningPoints();
  private @Nullable PathTangent tangent;
  private double arc;

  /**
   * @param energy at the λ and the unknowns to begin with; left at the last state found
   */
  public PathFollowing(TotalEnergy energy, PathSettings settings, StepMonitor monitor) {
    this.energy = energy;
    this.settings = settings;
    this.monitor = monitor;
    newton = new BorderedNewton(energy, new Linearisation(energy), settings.newton(), monitor);
  }

  /**
   * Follows the path from the start, towards growing λ at first, until a level is passed.
   *
   * @param end where the path ends
   * @param outputs levels at which a state is wanted, each time they are passed
   */
  public LoadPath run(PathLevel end, List<PathLevel> outputs) {
    arc = settings.first() * energy.extent();
    double start = energy.loadFactor();
    NewtonResult rest = newton.solve(energy.free(), level(PathLevel.load(start)));
    PathTangent first = new PathTangent(energy, newton.rate(), true);
    if (!rest.converged() || !first.defined()) {
      String why = rest.converged() ? "nothing moves as the load factor goes" : rest.reason();
      Outcome outcome = rest.converged() ? Outcome.STALLED : rest.outcome();
      return path(outcome, "no equilibrium to begin with: " + why);
    }
    arrive(rest, first, false);
    for (int k = 0; k < settings.mostSteps(); k++) {
      Optional<LoadPath> ended = step(end, outputs);
      if (ended.isPresent()) {
        return ended.get();
      }
    }
    return path(Outcome.STALLED, "%d steps did not reach the end".formatted(settings.mostSteps()));
  }

  private Optional<LoadPath> step(PathLevel end, List<PathLevel> outputs) {
    PathTangent from = current();
    double[] before = energy.save();
    NewtonResult result = attempt(from, arc);
    if (!result.converged()) {
      return retreat(before, result);
    }
    PathTangent next = PathTangent.after(from, energy, newton.rate());
    if (from.cosine(next) < SHARPEST && arc > settings.first() * energy.extent()) {
      energy.restore(before);
      arc /= 2;
      return Optional.empty();
    }
    EquilibriumState reached = new EquilibriumState(energy, result, false);
    double[] after = energy.save();
    List<PathLevel> levels = new ArrayList<>(outputs);
    if (!levels.contains(end)) {
      levels.add(end);
    }
    List<Crossing> crossings = Crossing.of(before, from, energy, next, arc, levels);
    Optional<LoadPath> ended = output(before, from, reached, end, crossings);
    if (ended.isPresent()) {
      return ended;
    }
    energy.restore(after);
    arrive(result, next, false);
    adapt(result.iterations().size());
    return Optional.empty();
  }

  private Optional<LoadPath> retreat(double[] before, NewtonResult result) {
    energy.restore(before);
    failures.add("load factor %.6g: %s".formatted(energy.loadFactor(), result.reason()));
    arc /= 4;
    boolean over =
        result.outcome() == Outcome.CANCELLED || arc < settings.smallest() * energy.extent();
    return over ? Optional.of(path(result.outcome(), result.reason())) : Optional.empty();
  }

  private PathTangent current() {
    if (tangent == null) {
      throw new IllegalStateException("no state yet");
    }
    return tangent;
  }

  private void adapt(int iterations) {
    double factor = Math.min(2, Math.max(0.5, Math.sqrt(EASY / iterations)));
    arc = Math.min(arc * factor, settings.largest() * energy.extent());
  }

  /** One arc step from the present state. */
  private NewtonResult attempt(PathTangent from, double length) {
    double[] x = energy.free();
    double t = Math.min(length, energy.largestStep(x, from.motion()));
    for (int k = 0; k < x.length; k++) {
      x[k] += t * from.motion()[k];
    }
    energy.setLoadFactor(energy.loadFactor() + t * from.load());
    return newton.solve(x, across(from));
  }

  /** States at the levels passed between two states; the whole path if the end was among them. */
  private Optional<LoadPath> output(
      double[] before,
      PathTangent from,
      EquilibriumState reached,
      PathLevel end,
      List<Crossing> crossings) {
    for (Crossing crossing : crossings) {
      energy.restore(before);
      NewtonResult near = attempt(from, crossing.fraction() * arc);
      NewtonResult result =
          near.converged() ? newton.solve(energy.free(), level(crossing.level())) : near;
      if (result.converged()) {
        arrive(result, PathTangent.after(from, energy, newton.rate()), true);
      } else {
        failures.add("load factor %.6g: %s".formatted(reached.loadFactor(), result.reason()));
      }
      if (crossing.level().equals(end)) {
        return Optional.of(ended(before, result));
      }
    }
    return Optional.empty();
  }

  /** The path at its end, which counts as reached only if a state was found there. */
  private LoadPath ended(double[] before, NewtonResult result) {
    if (result.converged()) {
      return path(Outcome.CONVERGED, "followed to the end asked for");
    }
    energy.restore(before);
    return path(
        result.outcome(), "the end was passed, but no state found there: " + result.reason());
  }

  private void arrive(NewtonResult result, PathTangent at, boolean requested) {
    EquilibriumState state = new EquilibriumState(energy, result, requested);
    turns.pass(state, at);
    states.add(state);
    monitor.reached(state);
    tangent = at;
  }

  private static BorderedNewton.Condition across(PathTangent from) {
    return new BorderedNewton.Condition() {
      @Override
      public double along(double[] d) {
        return from.along(d);
      }

      @Override
      public double alongLoad() {
        return 0;
      }

      @Override
      public double missing() {
        return 0;
      }
    };
  }

  private BorderedNewton.Condition level(PathLevel level) {
    int free = level.unknown() < 0 ? -1 : energy.supports().freeNumber(level.unknown());
    return new BorderedNewton.Condition() {
      @Override
      public double along(double[] d) {
        return free < 0 ? 0 : d[free];
      }

      @Override
      public double alongLoad() {
        return free < 0 ? 1 : 0;
      }

      @Override
      public double missing() {
        return level.value() - level.at(energy);
      }
    };
  }

  private LoadPath path(Outcome outcome, String reason) {
    return new LoadPath(outcome, reason, states, turns.events(), failures);
  }
}
