package auricle.viewer.task;

import auricle.anatomy.Level;
import auricle.assessment.Assessment;
import auricle.assessment.Assessor;
import auricle.assessment.ThreadLoad;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.healing.Bands;
import auricle.healing.Timeline;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.rehearsal.LiveEar;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The simulation itself, with its solved states kept from change to change; for one thread. */
public final class SimulationRehearser implements Rehearser {
  private final MaterialTables tables = MaterialTables.shipped();
  private Optional<LiveEar> live = Optional.empty();

  @Override
  public Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse {
    List<String> wrong =
        ear.findings("").stream().filter(Finding::isError).map(Finding::line).toList();
    if (!wrong.isEmpty()) {
      throw new CannotRehearse(wrong);
    }
    try {
      RehearsalResult result = solved(ear, watcher);
      return result.cancelled() ? Optional.empty() : Optional.of(rehearsed(result));
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings().stream().map(Finding::line).toList());
    }
  }

  private RehearsalResult solved(EarCase ear, RehearsalWatcher watcher) throws BadInputException {
    if (live.isPresent()) {
      return live.get().rerun(ear, watcher);
    }
    LiveEar made = LiveEar.of(ear, RehearsalSettings.tied(), tables, watcher);
    if (!made.result().cancelled()) {
      live = Optional.of(made);
    }
    return made.result();
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed tied, RehearsalWatcher watcher) {
    if (live.isEmpty() || !live.get().ear().equals(tied.ear()) || !tied.converged()) {
      return Optional.empty();
    }
    RehearsalResult result = live.get().healed(RehearsalSettings.usual(), watcher);
    Optional<Timeline> line = result.timeline().filter(t -> !t.cancelled());
    return line.map(t -> withYear(tied, result, t));
  }

  private static Rehearsed withYear(Rehearsed tied, RehearsalResult result, Timeline line) {
    Surfaces surfaces = new Surfaces(result.auricle(), result.before().shape());
    YearAfter year = new YearAfter(result.auricle(), surfaces, tied.before(), tied.tied());
    List<Band> bands =
        line.bands().map(Bands::figures).orElse(List.of()).stream()
            .map(b -> new Band(b.days(), b.key(), b.low(), b.high()))
            .toList();
    return new Rehearsed(
        tied.ear(),
        tied.map(),
        tied.steps(),
        year.moments(line),
        bands,
        tied.cautions(),
        tied.basis());
  }

  private static Rehearsed rehearsed(RehearsalResult result) {
    Surfaces surfaces = new Surfaces(result.auricle(), result.before().shape());
    List<Moment> steps = new ArrayList<>();
    for (StepResult step : result.steps()) {
      steps.add(
          new Moment(
              step.label(),
              0,
              false,
              surfaces.of(step.shape()),
              Surfaces.lines(step.shape()),
              step.measures(),
              step.threads(),
              step.outcome(),
              Optional.empty()));
    }
    ChartMap map = new ChartMap(result.auricle(), steps.get(0).surface());
    return new Rehearsed(
        result.ear(), map, steps, List.of(), List.of(), cautions(result), basis(result));
  }

  /** What the measured ear gives reason to say, and the plan by itself. */
  private static List<Caution> cautions(RehearsalResult result) {
    List<ThreadLoad> threads =
        result.after().threads().stream()
            .filter(ThreadState::suture)
            .map(t -> new ThreadLoad(t.name(), t.tension_n(), t.knotPull_n(), t.tearThrough_n()))
            .toList();
    Assessment assessment =
        Assessor.assess(
            result.ear(), result.before().measures(), result.after().measures(), threads);
    List<Caution> cautions = new ArrayList<>();
    assessment.cautions().forEach(c -> cautions.add(caution(c)));
    result.ear().findings("").stream()
        .map(f -> new Caution(sentence(f), f.remedy(), "", List.of()))
        .forEach(cautions::add);
    return cautions;
  }

  private static Caution caution(auricle.assessment.Caution c) {
    List<Double> levels =
        Arrays.stream(Level.values())
            .filter(l -> l.key().equals(c.where()))
            .map(Level::heightPercent)
            .toList();
    String basis = c.limit().source() + " (" + c.limit().confidence() + ")";
    return new Caution(c.words(), basis, levels.isEmpty() ? c.where() : "", levels);
  }

  private static String sentence(Finding f) {
    String found = f.found().isEmpty() ? "" : f.found();
    String expected = f.expected().isEmpty() ? "" : "; expected " + f.expected();
    String words = found + expected + ".";
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static List<String> basis(RehearsalResult result) {
    var p = result.provenance();
    return List.of(
        String.format(
            Locale.ROOT,
            "Mesh %s: %d vertices, %d triangles, %d unknowns; largest residual %.1e N; version %s.",
            p.mesh(),
            p.vertices(),
            p.triangles(),
            p.unknowns(),
            p.worstResidual_n(),
            p.version()));
  }
}
