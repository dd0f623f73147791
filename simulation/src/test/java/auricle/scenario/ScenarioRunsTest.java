package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.anatomy.Side;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario that comes with the project, rehearsed and held against what it expects. */
@Tag("slow")
class ScenarioRunsTest {
  private static final ScenarioReader READER = ScenarioReader.shipped();

  static List<Path> files() {
    return ShippedScenariosTest.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void whatIsExpectedComesOut(Path file) throws Exception {
    Scenario scenario = READER.read(file).scenario();
    Map<Side, RehearsalResult> results = new EnumMap<>(Side.class);
    for (ScenarioEar ear : scenario.ears()) {
      results.put(
          ear.side(), Rehearsal.run(ear.ear(), RehearsalSettings.usual(), RehearsalWatcher.SILENT));
    }
    List<String> unmet =
        scenario.ears().stream()
            .flatMap(ear -> Expectations.check(ear, results).stream())
            .filter(result -> !result.met())
            .map(ScenarioRunsTest::words)
            .toList();
    assertEquals(List.of(), unmet);
  }

  /** The year after the operation is rehearsed only where something is expected of it. */
  private static RehearsalSettings settings(Scenario scenario) {
    boolean year =
        scenario.ears().stream()
            .flatMap(ear -> ear.expected().figures().stream())
            .anyMatch(x -> x.from().isTime() || x.to().isTime());
    return year ? RehearsalSettings.usual() : RehearsalSettings.tied();
  }

  private static String words(ExpectationResult result) {
    return "%s, %s: expected %s, found %s %s"
        .formatted(
            result.side(), result.what(), result.expected(), result.foundWords(), result.unit());
  }
}
