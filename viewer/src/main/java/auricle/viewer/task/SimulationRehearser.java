package auricle.viewer.task;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.healing.Bands;
import auricle.healing.Timeline;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.rehearsal.Foreseen;
import auricle.rehearsal.LiveEar;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepResult;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The simulation itself, with its solved states kept from change to change; for one thread. */
public final class SimulationRehearser implements Rehearser {
  private static final long SEED = 1;

  private Optional<MaterialTables> tables = Optional.empty();
  private Optional<LiveEar> live = Optional.empty();
  private Optional<Rehearsed> shaped = Optional.empty();
  private Optional<Rehearsed> last = Optional.empty();

  @Override
  public Optional<Rehearsed> atOnce(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) throws CannotRehearse {
    List<Finding> wrong = ear.findings("").stream().filter(Finding::isError).toList();
    if (!wrong.isEmpty()) {
      throw new CannotRehearse(wrong);
    }
    return known(ear) ? turned(ear, watcher, foreseen) : before(ear, watcher);
  }

  private boolean known(EarCase ear) {
    return live.map(LiveEar::ear)
        .filter(e -> e.ear().equals(ear.ear()) && e.tissue().equals(ear.tissue()))
        .isPresent();
  }

  private Optional<Rehearsed> before(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse {
    try {
      watcher.progress("shaping the ear", 0);
      tables = tables.or(() -> Optional.of(MaterialTables.shipped()));
      EarCase untouched = ear.withPlan(Plan.of());
      LiveEar made = LiveEar.of(untouched, RehearsalSettings.tied(), tables.orElseThrow(), watcher);
      live = Optional.of(made);
      last = Optional.empty();
      shaped = Optional.of(Results.before(ear, made.result()));
      return shaped;
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings());
    }
  }

  private Optional<Rehearsed> turned(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) throws CannotRehearse {
    if (last.isEmpty()) {
      return Optional.empty();
    }
    LiveEar now = live.orElseThrow();
    Rehearsed before = last.orElseThrow();
    Telling telling =
        new Telling(
            watcher,
            steps -> {},
            end -> foreseen.accept(Results.foreseen(ear, now.result(), before, end)));
    try {
      return now.turn(ear, telling).map(end -> Results.turned(ear, now.result(), before, end));
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings());
    }
  }

  @Override
  public Optional<Rehearsed> tied(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> onTheWay) throws CannotRehearse {
    if (!known(ear)) {
      atOnce(ear, watcher, f -> {});
    }
    try {
      LiveEar now = live.orElseThrow();
      RehearsalResult result = now.rerun(ear, telling(watcher, ear, now.result(), onTheWay));
      if (result.cancelled()) {
        return Optional.empty();
      }
      last = Optional.of(Results.steps(result, last.or(() -> shaped).map(Rehearsed::map)));
      return last;
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings());
    }
  }

  /** The same watcher, which tells of the steps that have come to rest too. */
  private RehearsalWatcher telling(
      RehearsalWatcher watcher, EarCase ear, RehearsalResult from, Consumer<Rehearsed> onTheWay) {
    Optional<Rehearsed> known = last.or(() -> shaped);
    return new Telling(
        watcher,
        done -> known.ifPresent(k -> onTheWay.accept(Results.part(ear, from, k, done))),
        end -> {});
  }

  /** A watcher that hears of shapes too. */
  private record Telling(
      RehearsalWatcher watcher, Consumer<List<StepResult>> steps, Consumer<Foreseen> ahead)
      implements RehearsalWatcher {
    @Override
    public void progress(String words, double share) {
      watcher.progress(words, share);
    }

    @Override
    public boolean cancelled() {
      return watcher.cancelled();
    }

    @Override
    public void reached(List<StepResult> done) {
      steps.accept(done);
    }

    @Override
    public void foreseen(Foreseen end) {
      ahead.accept(end);
    }
  }

  private boolean present(Rehearsed tied) {
    return tied.converged() && live.filter(l -> l.ear().equals(tied.ear())).isPresent();
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed tied, int samples, RehearsalWatcher watcher) {
    if (!present(tied)) {
      return Optional.empty();
    }
    RehearsalSettings usual = RehearsalSettings.usual();
    RehearsalSettings wanted =
        new RehearsalSettings(usual.mesh(), true, usual.times_days(), samples, SEED);
    RehearsalResult result = live.orElseThrow().healed(wanted, watcher);
    Optional<Timeline> line = result.timeline().filter(t -> !t.cancelled() && !watcher.cancelled());
    return line.map(t -> withYear(tied, result, t));
  }

  private static Rehearsed withYear(Rehearsed tied, RehearsalResult result, Timeline line) {
    Surfaces surfaces = new Surfaces(result.auricle(), result.before().shape());
    List<Moment> year = new YearAfter(surfaces, tied.tied()).moments(line, result.healed());
    List<Band> bands =
        line.bands().map(Bands::figures).orElse(List.of()).stream()
            .map(b -> new Band(b.days(), b.key(), b.low(), b.high()))
            .toList();
    return tied.with(year, bands);
  }

  @Override
  public Optional<Rehearsed> withReactions(Rehearsed tied, RehearsalWatcher watcher)
      throws CannotRehearse {
    if (!present(tied)) {
      return Optional.empty();
    }
    try {
      List<auricle.rehearsal.Reaction> rates = live.orElseThrow().reactions(watcher);
      return watcher.cancelled()
          ? Optional.empty()
          : Optional.of(tied.with(Doses.reactions(tied.ear().plan(), rates)));
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings());
    }
  }
}
