package auricle.viewer.lesson;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.yamlfile.Entry;
import auricle.yamlfile.FileSchema;
import auricle.yamlfile.YamlFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads lesson files: YAML in the format {@code auricle-lesson/1}, checked by the schema {@code
 * lesson.json} beside this class, which documents every key. The scenario is a file beside the
 * lesson, named by its key {@code scenario}.
 */
public final class LessonReader {
  private static final String HOME = "/auricle/viewer/lesson/";
  private static final String SCENARIOS = "/auricle/viewer/scenarios/";
  private static final int LARGEST_MB = 1;

  private final FileSchema schema = FileSchema.load(HOME + "lesson.json");

  /** Names of the lessons that come with the program, in the order in which they build up. */
  public static List<String> shipped() {
    return List.of("coupling", "hidden_helix", "spring_back", "lobule");
  }

  /**
   * A lesson that comes with the program.
   *
   * @throws BadInputException if it has been damaged
   */
  public Lesson read(String shippedName) throws BadInputException {
    String text = resource(HOME + shippedName + ".yaml").orElseThrow();
    YamlFile yaml = YamlFile.read(shippedName + ".yaml", text, schema);
    return lesson(yaml, name -> resource(SCENARIOS + name));
  }

  /**
   * A lesson from a file.
   *
   * @throws BadInputException with everything that is wrong with it
   */
  public Lesson read(Path file) throws BadInputException {
    String text = YamlFile.text(file, "a lesson file", LARGEST_MB);
    YamlFile yaml = YamlFile.read(String.valueOf(file.getFileName()), text, schema);
    return lesson(yaml, name -> beside(file, name));
  }

  /** Whether a file says of itself that it is a lesson. */
  public static boolean isLesson(Path file) {
    try (Stream<String> lines = Files.lines(file)) {
      return lines.anyMatch(l -> l.startsWith("format: auricle-lesson/"));
    } catch (IOException | UncheckedIOException e) {
      return false;
    }
  }

  private interface Neighbour {
    Optional<String> text(String name);
  }

  private static Lesson lesson(YamlFile file, Neighbour neighbour) throws BadInputException {
    String name = file.root().text("scenario");
    Optional<String> scenario = neighbour.text(name);
    if (scenario.isEmpty()) {
      Finding missing =
          Finding.error(
              "/scenario",
              "no file '" + name + "' beside the lesson",
              "the name of a scenario file in the same folder",
              "");
      throw new BadInputException(file.locate(List.of(missing)));
    }
    List<Lesson.Page> pages = new ArrayList<>();
    for (Entry page : file.root().items("pages")) {
      pages.add(page(page));
    }
    return new Lesson(file.root().text("title"), scenario.orElseThrow(), pages);
  }

  private static Lesson.Page page(Entry page) {
    List<String> choices = page.items("choices").stream().map(Entry::string).toList();
    return new Lesson.Page(
        page.text("show", ""),
        page.text("view", ""),
        page.text("colours", ""),
        page.text("text").strip(),
        page.text("ask", "").strip(),
        choices,
        page.integer("right", 1) - 1);
  }

  private static Optional<String> beside(Path lesson, String name) {
    try {
      return Optional.of(Files.readString(lesson.toAbsolutePath().resolveSibling(name)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> resource(String name) {
    try (InputStream in = LessonReader.class.getResourceAsStream(name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
