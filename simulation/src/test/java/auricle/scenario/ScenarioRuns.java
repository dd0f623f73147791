package auricle.scenario;

import auricle.anatomy.Side;
import auricle.diagnostics.BadInputException;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Every shipped scenario is rehearsed once, however many tests look at what came out. */
public final class ScenarioRuns {
  private static final ScenarioReader READER = ScenarioReader.shipped();
  private static final Map<Path, Map<Side, RehearsalResult>> DONE = new ConcurrentHashMap<>();

  private ScenarioRuns() {}

  /** The shipped scenarios, in order. */
  public static List<Path> files() {
    return ShippedScenariosTest.files();
  }

  /** What came out of a scenario, a result for each ear; the planning mesh. */
  public static Map<Side, RehearsalResult> of(Path file) {
    return DONE.computeIfAbsent(file, ScenarioRuns::run);
  }

  /** The scenario of a file. */
  static Scenario scenario(Path file) {
    try {
      return READER.read(file).scenario();
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<Side, RehearsalResult> run(Path file) {
    Scenario scenario = scenario(file);
    RehearsalSettings settings = settings(scenario);
    Map<Side, RehearsalResult> results = new EnumMap<>(Side.class);
    try {
      for (ScenarioEar ear : scenario.ears()) {
        results.put(ear.side(), Rehearsal.run(ear.ear(), settings, RehearsalWatcher.SILENT));
      }
    } catch (BadInputException e) {
      throw new IllegalStateException(e);
    }
    return results;
  }

  /** The year after the operation is rehearsed only where something is expected of it. */
  private static RehearsalSettings settings(Scenario scenario) {
    boolean year =
        scenario.ears().stream()
            .flatMap(ear -> ear.expected().figures().stream())
            .anyMatch(x -> x.from().isTime() || x.to().isTime());
    return year ? RehearsalSettings.usual() : RehearsalSettings.tied();
  }
}
