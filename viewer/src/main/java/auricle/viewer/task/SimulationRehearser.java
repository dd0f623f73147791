package auricle.viewer.task;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.plan.EarCase;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The simulation itself. */
public final class SimulationRehearser implements Rehearser {
  @Override
  public Optional<Rehearsed> tied(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse {
    List<String> wrong =
        ear.findings("").stream().filter(Finding::isError).map(Finding::line).toList();
    if (!wrong.isEmpty()) {
      throw new CannotRehearse(wrong);
    }
    try {
      RehearsalResult result = Rehearsal.run(ear, RehearsalSettings.tied(), watcher);
      return result.cancelled() ? Optional.empty() : Optional.of(rehearsed(result));
    } catch (BadInputException e) {
      throw new CannotRehearse(e.findings().stream().map(Finding::line).toList());
    }
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed tied, RehearsalWatcher watcher) {
    return Optional.empty();
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
              step.outcome()));
    }
    ChartMap map = new ChartMap(result.auricle(), steps.get(0).surface());
    return new Rehearsed(
        result.ear(), map, steps, List.of(), List.of(), List.of(), cautions(result), basis(result));
  }

  /** What the plan itself gives reason to say, before anything is computed. */
  private static List<Caution> cautions(RehearsalResult result) {
    return result.ear().findings("").stream()
        .map(f -> new Caution(sentence(f), f.remedy(), "", List.of()))
        .toList();
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
