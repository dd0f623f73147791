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
import auricle.plan.Operation;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import auricle.surgery.EarBody;
import auricle.surgery.RestState;
import auricle.surgery.Settled;
import auricle.surgery.Solving;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** The time after the operation, for the ear of a rehearsal and for samples of its tissue. */
final class SpringBack {
  /** Samples run two at a time; their number has no say in the result. */
  private static final int THREADS = 2;

  private final EarBody body;
  private final List<Operation> operations;
  private final EarMeasurer measurer;
  private final RehearsalSettings settings;
  private final RehearsalWatcher watcher;
  private final RestState tied;

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
    tied = body.save();
  }

  /** The timeline, with bands if samples are asked for; the body is left as it was. */
  Timeline follow() {
    TimeMonitor watch =
        time_s -> {
          watcher.progress("healing, " + Durations.words(time_s), 1);
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

  private Optional<Bands> bands() {
    int all = settings.samples();
    return TissueBands.of(
        all,
        settings.seed(),
        THREADS,
        this::sample,
        done -> watcher.progress("tissue sample %d of %d".formatted(done, all), 1));
  }

  private Timeline sample(int number) throws BadInputException {
    Tissue drawn = body.tissue().sample(random(number));
    EarBody other = EarBody.of(body.auricle(), drawn, operations);
    Settled settled = operate(other);
    if (!settled.converged() && !watcher.cancelled()) {
      // a thicker ear does not fit where the first one touched itself
      other = EarBody.of(body.auricle(), drawn, operations);
      settled = stepByStep(other, solving());
    }
    return settled.converged()
        ? EarHealing.withoutReleaseTests(
            other,
            measurer,
            operations,
            settings.times_days(),
            TimeStepSettings.USUAL,
            time_s -> !watcher.cancelled())
        : Timeline.none(settled.outcome(), settled.words());
  }

  /** Each sample has a sequence of its own, whichever thread makes it. */
  private UniformRandomProvider random(int number) {
    return RandomSource.XO_RO_SHI_RO_128_PP.create(
        settings.seed() + 0x9E3779B97F4A7C15L * (number + 1));
  }

  /**
   * Straight to the end of the plan from where the first ear was; step by step where a thread is
   * tied at a tension, since how long it is then depends on the tissue.
   */
  private Settled operate(EarBody other) {
    return operations.stream().noneMatch(SpringBack::atTension)
        ? other.resume(operations, tied, solving())
        : stepByStep(other, solving());
  }

  private Solving solving() {
    return Solving.watched((lambda, iteration) -> !watcher.cancelled());
  }

  private Settled stepByStep(EarBody other, Solving solving) {
    Settled settled = other.apply(operations.get(0), solving);
    for (int i = 1; i < operations.size() && settled.converged(); i++) {
      settled = other.apply(operations.get(i), solving);
    }
    return settled;
  }

  private static boolean atTension(Operation operation) {
    return operation instanceof TiedOperation tie && tie.tie() instanceof Tie.Tension;
  }
}
