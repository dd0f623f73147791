package auricle.viewer.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.plan.Operation;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lesson files. */
class LessonReaderTest {
  private final LessonReader reader = new LessonReader();

  static List<String> shipped() {
    return LessonReader.shipped();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void shippedLessonsShowMomentsThatTheirScenariosHave(String name) throws BadInputException {
    Lesson lesson = reader.read(name);
    Scenario scenario = ScenarioReader.shipped().read(name, lesson.scenario()).scenario();
    List<String> known = new ArrayList<>(List.of("", "before", "tied", "3 months", "12 months"));
    scenario.ears().get(0).ear().plan().operations().stream()
        .map(Operation::name)
        .forEach(known::add);
    for (Lesson.Page page : lesson.pages()) {
      assertTrue(known.contains(page.show()), page.show());
      assertTrue(!page.asks() || page.right() < page.choices().size(), page.question());
    }
  }

  @Test
  void everythingThatIsWrongIsToldAtOnce(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("lesson.yaml");
    Files.writeString(
        file,
        "format: auricle-lesson/1\ntitel: x\nscenario: y.yaml\npages:\n  - text: a\n    vew: front\n");
    BadInputException e = assertThrows(BadInputException.class, () -> reader.read(file));
    assertTrue(e.findings().size() >= 3, e.toString());
    assertTrue(e.toString().contains("title"), e.toString());
  }

  @Test
  void aMissingScenarioIsNamed(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("lesson.yaml");
    Files.writeString(
        file, "format: auricle-lesson/1\ntitle: x\nscenario: y.yaml\npages:\n  - text: a\n");
    BadInputException e = assertThrows(BadInputException.class, () -> reader.read(file));
    assertEquals(1, e.findings().size());
    assertTrue(e.toString().contains("y.yaml"), e.toString());
  }
}
