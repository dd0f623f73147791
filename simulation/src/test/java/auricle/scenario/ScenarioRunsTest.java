package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.anatomy.Side;
import auricle.rehearsal.RehearsalResult;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every scenario that comes with the project, rehearsed and held against what it expects. */
@Tag("slow")
class ScenarioRunsTest {
  static List<Path> files() {
    return ShippedScenariosTest.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void whatIsExpectedComesOut(Path file) {
    Map<Side, RehearsalResult> results = ScenarioRuns.of(file);
    List<String> unmet =
        ScenarioRuns.scenario(file).ears().stream()
            .flatMap(ear -> Expectations.check(ear, results).stream())
            .filter(result -> !result.met())
            .map(ScenarioRunsTest::words)
            .toList();
    assertEquals(List.of(), unmet);
  }

  private static String words(ExpectationResult result) {
    return "%s, %s: expected %s, found %s %s"
        .formatted(
            result.side(), result.what(), result.expected(), result.foundWords(), result.unit());
  }
}
