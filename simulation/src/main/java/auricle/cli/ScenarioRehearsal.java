package auricle.cli;

import auricle.anatomy.Side;
import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.Sides;
import auricle.report.Hash;
import auricle.report.RehearsalReport;
import auricle.scenario.ExpectationResult;
import auricle.scenario.Expectations;
import auricle.scenario.LoadedScenario;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioEar;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rehearses the ears of a scenario one after the other. */
final class ScenarioRehearsal {
  private final LoadedScenario loaded;
  private final MaterialTables tables;
  private final RehearsalOptions options;
  private final Cancellation cancellation;
  private final PrintWriter errors;

  ScenarioRehearsal(
      LoadedScenario loaded,
      MaterialTables tables,
      RehearsalOptions options,
      Cancellation cancellation,
      PrintWriter errors) {
    this.loaded = loaded;
    this.tables = tables;
    this.options = options;
    this.cancellation = cancellation;
    this.errors = errors;
  }

  /** What came out; nothing if it was cancelled. */
  Optional<RehearsalReport> run() throws BadInputException {
    Map<Side, RehearsalResult> results = new EnumMap<>(Side.class);
    for (ScenarioEar ear : loaded.scenario().ears()) {
      RehearsalResult result = rehearse(ear);
      if (cancellation.asked() || result.cancelled()) {
        return Optional.empty();
      }
      results.put(ear.side(), result);
    }
    return Optional.of(report(results));
  }

  private RehearsalResult rehearse(ScenarioEar ear) throws BadInputException {
    boolean pair = loaded.scenario().ears().size() > 1;
    String name = pair ? ear.side().name().toLowerCase(java.util.Locale.ROOT) + " ear: " : "";
    RehearsalProgress progress = new RehearsalProgress(errors, options.quiet(), cancellation, name);
    try {
      return Rehearsal.run(ear.ear(), settings(), tables, progress);
    } catch (BadInputException e) {
      throw new BadInputException(loaded.locate(ear.side(), e.findings()));
    }
  }

  private RehearsalSettings settings() {
    List<Double> asked = loaded.scenario().times_days();
    List<Double> times = asked.isEmpty() ? RehearsalSettings.usual().times_days() : asked;
    return new RehearsalSettings(
        options.mesh(),
        options.springBack(),
        times,
        options.samples(),
        options.seed(),
        options.reactions());
  }

  private RehearsalReport report(Map<Side, RehearsalResult> results) {
    Scenario scenario = loaded.scenario();
    List<ExpectationResult> expectations = new ArrayList<>();
    for (ScenarioEar ear : scenario.ears()) {
      expectations.addAll(Expectations.check(ear, results));
    }
    return new RehearsalReport(
        scenario.title().isEmpty() ? loaded.name() : scenario.title(),
        loaded.name(),
        Hash.sha256(loaded.text().getBytes(StandardCharsets.UTF_8)),
        ProgramVersion.version(),
        List.copyOf(results.values()),
        Sides.of(results),
        expectations);
  }
}
