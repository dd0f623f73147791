package auricle.rehearsal;

import auricle.diagnostics.BadInputException;
import auricle.healing.Bands;
import auricle.healing.Durations;
import auricle.healing.EarHealing;
import auricle.healing.TimeMonitor;
import auricle.healing.TimeStepSettings;
import auricle.healing.Timeline;
import auricle.healing.TissueBands;
import auricle.material.Tissue;
import auricle.measurement.EarMeasurer;
import auricle.numerics.Outcome;
import auricle.numerics.Workers;
import auricle.plan.Operation;
import auricle.surgery.EarBody;
import auricle.surgery.Settled;
import auricle.surgery.Solving;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** The time after the operation, for the ear of a rehearsal and for samples of its tissue. */
final class SpringBack {
  /** How long a year and a sample take beside a plan, roughly. */
  private static final double YEAR = 1.5;

  private static final double SAMPLE = 1.2;

  private final EarBody body;
  private final List<Operation> operations;
  private final EarMeasurer measurer;
  private final RehearsalSettings settings;
  private final RehearsalWatcher watcher;

  /**
   * @param body tied, at rest
   * @param operations that have been done, in order
   */
  SpringBack(
      EarBody body,
      List<Operation> operations,
      RehearsalSettings settings,
      RehearsalWatcher watcher) {
    this.body = body;
    this.operations = operations;
    this.settings = settings;
    this.watcher = watcher;
    measurer = new EarMeasurer(body.auricle());
  }

  /** What was found at the end of the plan, and the time after it. */
  RehearsalResult after(RehearsalResult tied) {
    Timeline line = follow();
    List<DeformedEar> shapes = YearShapes.of(body, measurer, line, watcher::cancelled);
    boolean whole = shapes.size() == line.moments().size();
    return tied.with(
        whole ? line : Timeline.none(Outcome.CANCELLED, "cancelled on request"), shapes);
  }

  /** The timeline, with bands if samples are asked for; the body is left as it was. */
  Timeline follow() {
    TimeMonitor watch =
        time_s -> {
          watcher.progress(words(time_s), yearShare() * passed(time_s));
          return !watcher.cancelled();
        };
    Timeline line =
        EarHealing.follow(
            body, measurer, operations, settings.times_days(), TimeStepSettings.USUAL, watch);
    if (settings.samples() == 0 || !line.converged()) {
      return line;
    }
    return bands().map(line::with).orElse(line);
  }

  /** How long it takes, roughly, in units of a plan: for progress alone. */
  static double work(RehearsalSettings settings) {
    return YEAR + settings.samples() * SAMPLE;
  }

  private double yearShare() {
    return YEAR / work(settings);
  }

  private static String words(double time_s) {
    return time_s > 0 ? "healing, at " + Durations.words(time_s) : "healing, from the table on";
  }

  /** Share of the moments asked for that have passed. */
  private double passed(double time_s) {
    List<Double> days = settings.times_days();
    long over = days.stream().filter(d -> d * Durations.DAY_S <= time_s).count();
    return (double) over / days.size();
  }

  private Optional<Bands> bands() {
    int all = settings.samples();
    return TissueBands.of(
        all,
        settings.seed(),
        Workers.present().threads(),
        this::sample,
        done ->
            watcher.progress(
                "tissue sample %d of %d".formatted(done, all),
                yearShare() + (1 - yearShare()) * done / all));
  }

  /**
   * An ear of its own tissue: the whole plan, so that every thread is tied as the plan says on this
   * ear, then the time after it, all on the calling thread.
   */
  Timeline sample(int number) throws Exception {
    return Workers.ALONE.within(() -> rehearsed(number));
  }

  private Timeline rehearsed(int number) throws BadInputException {
    EarBody other = EarBody.of(body.auricle(), drawn(number), operations);
    Settled settled = operate(other);
    return settled.converged()
        ? EarHealing.measuredAlone(
            other,
            measurer,
            operations,
            settings.times_days(),
            TimeStepSettings.USUAL,
            time_s -> !watcher.cancelled())
        : Timeline.none(settled.outcome(), settled.words());
  }

  /** The tissue of a sample; each has a sequence of its own, whichever thread makes it. */
  Tissue drawn(int number) {
    UniformRandomProvider random =
        RandomSource.XO_RO_SHI_RO_128_PP.create(
            settings.seed() + 0x9E3779B97F4A7C15L * (number + 1));
    return body.tissue().sample(random);
  }

  private Settled operate(EarBody other) {
    Solving solving = Solving.watched((lambda, iteration) -> !watcher.cancelled());
    Settled settled = Settled.untouched();
    for (int i = 0; i < operations.size() && settled.converged(); i++) {
      settled = other.apply(operations.get(i), solving);
    }
    return settled;
  }
}
