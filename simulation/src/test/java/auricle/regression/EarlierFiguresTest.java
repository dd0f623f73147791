package auricle.regression;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.scenario.ScenarioRuns;
import auricle.verification.ReferenceTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures of every shipped scenario are those that were approved last. Where they have moved
 * for a good reason, {@code -Dauricle.figures.approve=true} writes the table anew, and the commit
 * says the reason.
 */
@Tag("slow")
class EarlierFiguresTest {
  private static final Path TABLE =
      Path.of("src/test/resources/auricle/regression/scenario_figures.csv");

  /**
   * In mm and deg: a hundredth of what a millimetre rule or a protractor reads, and far above what
   * another order of summation does to a state at rest.
   */
  private static final double TOLERANCE = 0.005;

  private static final ReferenceTable APPROVED = table();

  static List<Path> scenarios() {
    return ScenarioRuns.files();
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void noFigureHasMovedUnnoticed(Path scenario) {
    Map<String, Double> approved = approved(scenario);
    Map<String, Double> now = EarlierFigures.of(scenario);
    assertEquals(List.copyOf(approved.keySet()), List.copyOf(now.keySet()));
    List<String> moved = new ArrayList<>();
    now.forEach(
        (row, value) -> {
          double was = approved.getOrDefault(row, Double.NaN);
          if (!(Math.abs(value - was) <= TOLERANCE)) {
            moved.add(row + ": " + was + " was, " + value + " is");
          }
        });
    assertEquals(List.of(), moved);
  }

  @Test
  void everyRowIsOfAShippedScenario() {
    int rows = scenarios().stream().mapToInt(s -> approved(s).size()).sum();
    assertEquals(APPROVED.rows(), rows);
  }

  private static Map<String, Double> approved(Path scenario) {
    double[] values = APPROVED.column("value");
    Map<String, Double> figures = new LinkedHashMap<>();
    for (int i = 0; i < APPROVED.rows(); i++) {
      if (scenario.endsWith(APPROVED.text(i, "scenario") + ".yaml")) {
        figures.put(row(i), values[i]);
      }
    }
    return figures;
  }

  private static String row(int i) {
    return Stream.of("scenario", "ear", "moment", "figure")
        .map(column -> APPROVED.text(i, column))
        .collect(Collectors.joining(","));
  }

  private static ReferenceTable table() {
    try {
      if (Boolean.getBoolean("auricle.figures.approve")) {
        Files.write(TABLE, EarlierFigures.table());
      }
      return ReferenceTable.parse(TABLE.getFileName().toString(), Files.readString(TABLE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
