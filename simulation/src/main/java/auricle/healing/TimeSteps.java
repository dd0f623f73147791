package auricle.healing;

import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.TotalEnergy;
import auricle.mesh.Directors;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Follows a body that changes with time from rest to rest: every step is one minimisation of an
 * energy that its {@link TimePart}s set. Steps adapt to a bound of their error and hit every time
 * asked for, and every time at which a part changes, exactly. Where a part gives way the moment is
 * sought by shorter steps; then the body is led to its new rest at that moment by load steps,
 * through a snap if there is one.
 */
public final class TimeSteps {
  private static final double SAFETY = 0.9;
  private static final double CUT = 0.25;

  private final TotalEnergy energy;
  private final List<TimePart> parts;
  private final TimeStepSettings settings;
  private final TimeMonitor monitor;
  private final NearbyRest rest;
  private final Motion motion;
  private final List<TimeEvent> events = new ArrayList<>();
  private StepTally tally = new StepTally();

  /** Time of the present state, s. */
  private double now;

  /** How long the next step may be, s. */
  private double nextLength;

  /**
   * @param energy sum of the parts' terms and of those that do not change, at load factor 1 and at
   *     rest
   * @param directors the directors that the energy moves
   * @param parts all that changes
   * @param start_s time of that state, s
   */
  public TimeSteps(
      TotalEnergy energy,
      Directors directors,
      List<? extends TimePart> parts,
      double start_s,
      TimeStepSettings settings,
      TimeMonitor monitor) {
    this(
        energy,
        new NearbyRest(energy, new NewtonMinimiser(energy)),
        directors,
        parts,
        start_s,
        settings,
        monitor);
  }

  /** The same with a solver that has this energy's sparse pattern already, or shares it. */
  TimeSteps(
      TotalEnergy energy,
      NearbyRest rest,
      Directors directors,
      List<? extends TimePart> parts,
      double start_s,
      TimeStepSettings settings,
      TimeMonitor monitor) {
    this.energy = energy;
    this.rest = rest;
    this.parts = List.copyOf(parts);
    this.settings = settings;
    this.monitor = monitor;
    motion = new Motion(energy, directors);
    now = start_s;
    nextLength = settings.first_s();
  }

  /** Present time, s. */
  public double time() {
    return now;
  }

  /** All unknowns at the present state; shared, not to be changed. */
  public double[] unknowns() {
    return energy.unknowns();
  }

  /**
   * Comes to rest at the present time, after something outside the parts has changed; to be called
   * once before the first step. What cannot hold gives way.
   */
  public TimeResult settle() {
    clear();
    aim(time());
    NewtonResult solution = solve(energy.free());
    if (!solution.converged()) {
      return result(solution.outcome(), words(time(), solution));
    }
    arrived(time());
    motion.forget();
    TimeResult ended = giveWay();
    return ended == null ? atRest() : ended;
  }

  private void clear() {
    tally = new StepTally();
    events.clear();
  }

  private TimeResult atRest() {
    return result(Outcome.CONVERGED, "at rest at " + Durations.words(time()));
  }

  /**
   * Steps to a time.
   *
   * @param to_s s since the start, not before the present
   */
  public TimeResult reach(double to_s) {
    clear();
    while (monitor.proceed(time())) {
      if (time() >= to_s) {
        return atRest();
      }
      if (tally.tried() >= settings.mostSteps()) {
        String words = "%d steps in time were not enough; at rest up to %s";
        return result(
            Outcome.STALLED, words.formatted(settings.mostSteps(), Durations.words(time())));
      }
      TimeResult ended = step(to_s);
      if (ended != null) {
        return ended;
      }
    }
    return result(Outcome.CANCELLED, "cancelled on request at " + Durations.words(time()));
  }

  private @Nullable TimeResult step(double to_s) {
    double next = Math.min(Math.min(to_s, nextChange()), time() + nextLength);
    double length = next - time();
    double[] saved = energy.save();
    aim(next);
    NewtonResult solution = solve(motion.continued(length));
    if (!solution.converged()) {
      energy.restore(saved);
      boolean fatal =
          solution.outcome() == Outcome.CANCELLED || CUT * length < settings.smallest_s();
      return fatal ? result(solution.outcome(), words(next, solution)) : shorten(CUT * length);
    }
    double error = motion.bend(length);
    boolean tooFar = error > settings.tolerance_mm() && length > settings.smallest_s();
    if (tooFar || tooLate(next, length)) {
      energy.restore(saved);
      return shorten(tooFar ? length * factor(error) : length / 2);
    }
    tally.took();
    nextLength = length * factor(error);
    return accept(next, length);
  }

  private double factor(double error) {
    double wanted = SAFETY * Math.sqrt(settings.tolerance_mm() / Math.max(error, 1e-30));
    return Math.min(settings.growth(), Math.max(0.2, wanted));
  }

  private @Nullable TimeResult shorten(double length) {
    tally.rejected();
    nextLength = Math.max(length, settings.smallest_s());
    return null;
  }

  /** Whether something gave way within the step, at a moment not known well enough yet. */
  private boolean tooLate(double next, double length) {
    double known = Math.max(settings.momentShare() * next, settings.smallest_s());
    return length > known
        && parts.stream()
            .anyMatch(
                part ->
                    part.nextChange(time()) != next && part.yields(energy.unknowns()).isPresent());
  }

  private @Nullable TimeResult accept(double next, double length) {
    arrived(next);
    motion.learn(length, next);
    return giveWay();
  }

  /** Lets parts give way, one after the other, until all hold. */
  private @Nullable TimeResult giveWay() {
    for (TimePart part : parts) {
      Optional<String> words = part.yields(energy.unknowns());
      if (words.isPresent()) {
        events.add(new TimeEvent(time(), words.get()));
        TimeResult ended = give(part);
        return ended == null ? giveWay() : ended;
      }
    }
    return null;
  }

  private @Nullable TimeResult give(TimePart part) {
    aim(time());
    part.give(energy.unknowns());
    energy.setLoadFactor(0);
    StepMonitor watch = (factor, line) -> monitor.proceed(time());
    LoadPath path = new LoadSteps(energy, rest.minimiser(), settings.leading(), watch).run(1);
    path.events().forEach(event -> events.add(new TimeEvent(time(), event.words())));
    tally.spent(path.iterations());
    if (path.outcome() != Outcome.CONVERGED) {
      return result(path.outcome(), Durations.words(time()) + ": " + path.reason());
    }
    aim(time());
    arrived(time());
    motion.forget();
    nextLength = settings.first_s();
    return null;
  }

  private double nextChange() {
    return parts.stream()
        .mapToDouble(part -> part.nextChange(time()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private void aim(double to_s) {
    parts.forEach(part -> part.aim(time(), to_s));
    energy.setLoadFactor(1);
  }

  private NewtonResult solve(double[] x) {
    NewtonResult solution = rest.find(x, settings.newton(), line -> monitor.proceed(now));
    tally.spent(solution.iterations().size());
    return solution;
  }

  private void arrived(double at_s) {
    parts.forEach(part -> part.arrive(energy.unknowns()));
    now = at_s;
  }

  private static String words(double at_s, NewtonResult solution) {
    return Durations.words(at_s) + ": " + solution.reason();
  }

  private TimeResult result(Outcome outcome, String reason) {
    return tally.result(outcome, reason, events);
  }
}
