package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The scenarios that come with the project: what can be said of them without rehearsing. */
class ShippedScenariosTest {
  private static final ScenarioReader READER = ScenarioReader.shipped();

  static List<Path> files() {
    try (Stream<Path> files = Files.list(Path.of("../scenarios"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void thereAreEnough() {
    assertTrue(files().size() >= 10);
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachSaysThatItIsInventedAndWhatItsIdeaIs(Path file) throws Exception {
    List<String> lines = Files.readAllLines(file);
    assertTrue(lines.get(0).startsWith("# An invented ear"), lines.get(0));
    assertTrue(lines.get(0).contains("not a medical device"));
    assertTrue(lines.get(1).startsWith("# Idea: "), lines.get(1));
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachCanBeUsedAndExpectsSomething(Path file) throws Exception {
    Scenario scenario = READER.read(file).scenario();
    assertFalse(scenario.title().isEmpty());
    assertTrue(scenario.ears().stream().anyMatch(e -> !e.expected().figures().isEmpty()));
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachReadsBackTheSameAfterWriting(Path file) throws Exception {
    Scenario scenario = READER.read(file).scenario();
    String text = ScenarioWriter.text(scenario);
    assertEquals(scenario, READER.read("again.yaml", text).scenario(), text);
  }
}
