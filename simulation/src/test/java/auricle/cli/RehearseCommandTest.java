package auricle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.report.RehearsalSchema;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The main job on the command line: an invented ear of two sutures, and a pair. */
class RehearseCommandTest {
  private static final String ONE =
      """
      format: auricle-scenario/1
      title: Two sutures, invented
      ear: {fold_angle_upper_deg: 132, fold_angle_middle_deg: 128, helix_mastoid_upper_mm: 19, helix_mastoid_middle_mm: 20}
      plan:
        - fold_suture: {name: upper suture, level_percent: 78, tie: {gap_mm: 5.5}}
        - fold_suture: {name: lower suture, level_percent: 62, tie: {gap_mm: 6}}
      """;

  private static final String PAIR =
      """
      format: auricle-scenario/1
      title: A pair, invented
      ear: {age_years: 20}
      right:
        plan:
          - fold_suture: {name: suture, level_percent: 70, tie: {gap_mm: 6}}
      left:
        plan:
          - fold_suture: {name: suture, level_percent: 70, tie: {gap_mm: 7}}
      """;

  @TempDir static Path folder;

  private static String table = "";
  private static String progress = "";

  @BeforeAll
  static void rehearseOnce() throws IOException {
    Files.writeString(folder.resolve("one.yaml"), ONE);
    Files.writeString(folder.resolve("pair.yaml"), PAIR);
    Run one = run("rehearse", folder + "/one.yaml", "--out", folder + "/one");
    assertEquals(0, one.code, one.err);
    table = one.out;
    progress = one.err;
    Run pair = run("rehearse", folder + "/pair.yaml", "--tied", "-q", "-o", folder + "/pair");
    assertEquals(0, pair.code, pair.err);
  }

  private record Run(int code, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private static JsonNode json(String name) throws IOException {
    return JsonMapper.shared().readTree(Files.readString(folder.resolve(name)));
  }

  private static List<String> files(String name) throws IOException {
    try (Stream<Path> all = Files.walk(folder.resolve(name))) {
      return all.filter(Files::isRegularFile)
          .map(f -> folder.resolve(name).relativize(f).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void everyFileIsThere() throws Exception {
    List<String> files = files("one");
    List<String> wanted =
        List.of(
            "outlines.png",
            "outlines.svg",
            "result.json",
            "sections.png",
            "sections.svg",
            "shapes.pvd",
            "shapes/step_00.obj",
            "shapes/step_02.vtu",
            "shapes/year_01.obj",
            "shapes/year_06.vtu",
            "steps.csv",
            "steps.png",
            "steps.svg",
            "threads.csv");
    assertTrue(files.containsAll(wanted), files::toString);
    assertTrue(files("pair").contains("sections_left.png"), () -> "pair");
  }

  @Test
  void shapesOfTheYearHoldTheStrainThatHasSettled() throws Exception {
    String series = Files.readString(folder.resolve("one/shapes.pvd"));
    assertTrue(series.indexOf("step_02.vtu") < series.indexOf("year_01.vtu"), series);
    assertFalse(files("one").contains("shapes/year_00.vtu"), "tied is the last step");
    assertEquals(0, greatest("one/shapes/step_02.vtu", "settled_strain"));
    double settled = greatest("one/shapes/year_06.vtu", "settled_strain");
    assertTrue(settled > 1e-3 && settled <= greatest("one/shapes/year_06.vtu", "strain"));
    assertFalse(files("pair").contains("shapes/year_01_left.vtu"), "tied alone was asked for");
  }

  /** Greatest value of a field in a VTU file. */
  private static double greatest(String name, String field) throws Exception {
    String text = Files.readString(folder.resolve(name));
    Matcher array = Pattern.compile("Name=\"" + field + "\"[^>]*>\\s*([^<\\s]+)").matcher(text);
    assertTrue(array.find(), field);
    ByteBuffer data =
        ByteBuffer.wrap(Base64.getDecoder().decode(array.group(1))).order(ByteOrder.LITTLE_ENDIAN);
    int count = (int) data.getLong() / Double.BYTES;
    return IntStream.range(0, count).mapToDouble(i -> data.getDouble()).max().orElseThrow();
  }

  @Test
  void theResultFollowsItsSchema() throws Exception {
    var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    var schema = registry.getSchema(RehearsalSchema.text(), InputFormat.JSON);
    for (String name : List.of("one/result.json", "pair/result.json")) {
      String text = Files.readString(folder.resolve(name));
      assertEquals(List.of(), schema.validate(text, InputFormat.JSON), name);
    }
  }

  @Test
  void theSchemaIsPrintedOnRequest() {
    assertEquals(RehearsalSchema.text(), run("rehearse", "--schema").out);
  }

  @Test
  void theStepsAddUpToTheWholeChange() throws Exception {
    JsonNode result = json("one/result.json");
    double sum = 0;
    for (JsonNode step : result.get("steps")) {
      sum += step.get("change").get("helix_mastoid_upper_mm").asDouble();
    }
    JsonNode measures = result.get("measures");
    double whole =
        measures.get("after").get("helix_mastoid_upper_mm").asDouble()
            - measures.get("before").get("helix_mastoid_upper_mm").asDouble();
    assertEquals(whole, sum, 1e-9);
    assertTrue(whole < -0.5, "set back by " + whole);
  }

  @Test
  void theTableOfStepsHoldsTheNumbersOfTheResult() throws Exception {
    List<String> rows = Files.readAllLines(folder.resolve("one/steps.csv"));
    List<String> head = List.of(rows.get(0).split(","));
    String last = rows.get(rows.size() - 1);
    int column = head.indexOf("fold_angle_upper_deg");
    JsonNode after = json("one/result.json").get("measures").get("after");
    assertTrue(last.contains("," + after.get("fold_angle_upper_deg").asString() + ","), last);
    assertTrue(column > 0);
    assertEquals(4, rows.size());
  }

  @Test
  void theTerminalShowsTheSameNumbersRounded() throws Exception {
    JsonNode after = json("one/result.json").get("measures").get("after");
    String rounded =
        String.format(
            java.util.Locale.ROOT, "%.1f", after.get("helix_mastoid_upper_mm").asDouble());
    assertTrue(table.contains(rounded), table);
    assertTrue(table.contains("upper suture") && table.contains("Not a medical device"), table);
    assertTrue(progress.contains("upper suture"), progress);
  }

  @Test
  void picturesAreWellFormedAndNotBlank() throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    for (String name : files("one")) {
      Path file = folder.resolve("one").resolve(name);
      if (name.endsWith(".svg") || name.endsWith(".vtu") || name.endsWith(".pvd")) {
        String root =
            factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement().getTagName();
        assertTrue(List.of("svg", "VTKFile").contains(root), name);
      } else if (name.endsWith(".png")) {
        try (InputStream in = new ByteArrayInputStream(Files.readAllBytes(file))) {
          assertTrue(ImageIO.read(in).getWidth() > 1700, name);
        }
      }
    }
  }

  @Test
  void everyOutputSaysWhatItIsFor() throws Exception {
    for (String name : files("one")) {
      boolean says =
          name.endsWith(".png")
              || name.endsWith(".csv")
              || name.endsWith(".pvd")
              || Files.readString(folder.resolve("one").resolve(name))
                  .contains("Not a medical device");
      assertTrue(says, name);
    }
  }

  @Test
  void theYearStandsByItsTimes() throws Exception {
    JsonNode result = json("one/result.json");
    JsonNode at = result.get("measures").get("at");
    assertEquals(7, at.size());
    JsonNode year = at.get("12_months").get("helix_mastoid_upper_mm");
    List<String> rows = Files.readAllLines(folder.resolve("one/timeline.csv"));
    assertEquals(8, rows.size());
    assertTrue(rows.get(7).contains("," + year.asString() + ","), rows.get(7));
    assertTrue(table.contains("12 mo"), table);
    assertFalse(json("pair/result.json").get("ears").get(0).has("timeline"));
  }

  @Test
  void aPairStandsInOneFile() throws Exception {
    JsonNode pair = json("pair/result.json");
    assertFalse(pair.has("measures"));
    assertEquals("right", pair.get("ears").get(0).get("side").asString());
    assertEquals("left", pair.get("ears").get(1).get("side").asString());
    assertEquals(4, pair.get("side_differences").size());
  }

  @Test
  void theSameInputGivesTheSameBytes() throws Exception {
    Run again = run("rehearse", folder + "/one.yaml", "-q", "-o", folder + "/again");
    assertEquals(0, again.code, again.err);
    for (String name :
        List.of("result.json", "sections.png", "sections.svg", "steps.csv", "timeline.csv")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("one").resolve(name)),
          Files.readAllBytes(folder.resolve("again").resolve(name)),
          name);
    }
  }

  @Test
  void forMachinesTheResultIsPrinted() throws Exception {
    Run json = run("rehearse", folder + "/pair.yaml", "--tied", "-q", "--json");
    assertEquals(Files.readString(folder.resolve("pair/result.json")), json.out);
    assertEquals("", json.err);
  }

  @Test
  void anExpectationThatIsNotMetEndsWithOne(@TempDir Path other) throws Exception {
    String expected =
        "expected:\n  figures:\n    - {change_of: helix_mastoid_upper_mm, sign: rises,"
            + " because: to see it fail}\n";
    Path file = Files.writeString(other.resolve("s.yaml"), ONE + expected);
    Run run = run("rehearse", file.toString(), "--tied", "-q");
    assertEquals(1, run.code, run.err);
    assertTrue(run.out.contains("  NO   ") && run.out.contains("because to see it fail"), run.out);
  }

  @Test
  void badInputEndsWithTwoAndLeavesNothing(@TempDir Path other) throws Exception {
    Path file = Files.writeString(other.resolve("s.yaml"), ONE.replace("gap_mm", "gpa_mm"));
    Run run = run("rehearse", file.toString(), "--out", other + "/out");
    assertEquals(2, run.code);
    assertTrue(run.err.startsWith("error: s.yaml line 5"), run.err);
    assertFalse(Files.exists(other.resolve("out")));
    assertEquals(2, run("rehearse").code);
    assertEquals(2, run("rehearse", other + "/none.yaml").code);
    assertEquals(2, run("rehearse", folder + "/one.yaml", "--mesh", "coarse").code);
    assertEquals(2, run("rehearse", folder + "/one.yaml", "--tables", other + "/none").code);
  }

  @ParameterizedTest
  @ValueSource(strings = {"planning", "fine", "reference", "FINE"})
  void theLevelsOfTheMeshAreWrittenAsTheHelpWritesThem(String level) {
    assertEquals(0, run("rehearse", "--mesh", level, "--schema").code);
  }

  @Test
  void aFileInThePlaceOfTheFolderIsBadInput(@TempDir Path other) throws Exception {
    Files.writeString(other.resolve("out"), "a file");
    Run run = run("rehearse", folder + "/one.yaml", "--tied", "-q", "-o", other + "/out");
    assertEquals(2, run.code);
    assertEquals("a file", Files.readString(other.resolve("out")));
  }
}
