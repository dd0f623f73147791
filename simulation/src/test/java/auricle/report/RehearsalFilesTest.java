package auricle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.measurement.Figure;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.ThreadState;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every file of a rehearsal that was made up, so that nothing has to be solved. */
class RehearsalFilesTest {
  @TempDir Path folder;

  private Path write(RehearsalReport report) throws IOException {
    Path out = folder.resolve("out");
    try (ResultFolder files = new ResultFolder(out)) {
      RehearsalFiles.write(files, report, () -> false);
      files.commit(RehearsalFiles::isOurs);
    }
    return out;
  }

  private static JsonNode json(RehearsalReport report) {
    return JsonMapper.shared().readTree(RehearsalJson.write(report));
  }

  private static List<Path> files(Path out) throws IOException {
    try (Stream<Path> all = Files.walk(out)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  @Test
  void everyFigureOfTheResultIsTheOneMeasured() {
    RehearsalReport report = PaperRehearsal.report(true, 1);
    RehearsalResult ear = report.ears().get(0);
    JsonNode json = json(report);
    for (Figure figure : Figure.values()) {
      JsonNode measures = json.get("measures");
      String key = figure.key();
      assertEquals(
          figure.of(ear.before().measures()), measures.get("before").get(key).asDouble(), key);
      assertEquals(
          figure.of(ear.after().measures()), measures.get("after").get(key).asDouble(), key);
    }
  }

  @Test
  void everyMaterialRowStandsWithSourceAndConfidence() {
    RehearsalReport report = PaperRehearsal.report(true, 1);
    JsonNode rows = json(report).get("basis").get("material_rows");
    assertEquals(report.ears().get(0).materialRows().size(), rows.size());
    for (JsonNode row : rows) {
      assertFalse(row.get("source").asString().isBlank(), row::toString);
      assertFalse(row.get("confidence").asString().isBlank(), row::toString);
    }
  }

  @Test
  void resultsOfOneEarAndOfTwoFollowTheSchema() {
    var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    var schema = registry.getSchema(RehearsalSchema.text(), InputFormat.JSON);
    for (boolean converged : new boolean[] {true, false}) {
      for (int ears = 1; ears <= 2; ears++) {
        String json = RehearsalJson.write(PaperRehearsal.report(converged, ears));
        assertEquals(List.of(), schema.validate(json, InputFormat.JSON));
      }
    }
  }

  @Test
  void aKeyThatTheSchemaDoesNotKnowIsRefused() {
    var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    var schema = registry.getSchema(RehearsalSchema.text(), InputFormat.JSON);
    String json = RehearsalJson.write(PaperRehearsal.report(true, 1));
    String wrong = json.replace("\"converged\"", "\"convergde\"");
    assertFalse(schema.validate(wrong, InputFormat.JSON).isEmpty());
  }

  @Test
  void withoutEquilibriumEveryFileSaysSo() throws Exception {
    Path out = write(PaperRehearsal.report(false, 1));
    for (Path file : files(out)) {
      String name = out.relativize(file).toString();
      if (name.endsWith(".png") || name.endsWith(".pvd") || name.contains("step_00")) {
        continue; // the letters of a raster are tested with the pictures; step 0 is in equilibrium
      }
      String text = Files.readString(file);
      boolean says =
          text.contains("NOT IN EQUILIBRIUM")
              || text.contains("\"converged\" : false")
              || text.contains("false");
      assertEquals(!name.contains("step_01"), says, name);
    }
  }

  @Test
  void withoutEquilibriumTheTerminalSaysSoFirst() {
    String text = RehearsalText.write(PaperRehearsal.report(false, 1));
    int warning = text.indexOf("NOT IN EQUILIBRIUM, do not use these figures");
    assertTrue(warning > 0 && warning < text.indexOf("before  after"), text);
    assertFalse(RehearsalText.write(PaperRehearsal.report(true, 1)).contains("NOT IN EQUILIBRIUM"));
  }

  @Test
  void whatALittleMoreOfADoseWouldDoIsToldAtTheTerminal() {
    String text = RehearsalText.write(PaperRehearsal.report(true, 1));
    String line = text.lines().filter(l -> l.contains("gap_mm")).findFirst().orElse("");
    assertTrue(line.contains("suture") && line.contains("+4.50"), text);
  }

  @Test
  void theThreadsOfTheTableAreThoseOfTheResult() {
    RehearsalReport report = PaperRehearsal.report(true, 1);
    String csv = ThreadsTable.write(report.ears());
    ThreadState thread = report.ears().get(0).after().threads().get(0);
    assertTrue(csv.contains("," + thread.tension_n() + ","), csv);
    assertEquals(3, csv.lines().count());
  }

  @Test
  void theTableOfStepsHasARowAStepAndNoChangeBeforeTheFirst() {
    List<String> rows = StepsTable.write(PaperRehearsal.report(true, 1).ears()).lines().toList();
    assertEquals(4, rows.size());
    int columns = rows.get(0).split(",", -1).length;
    rows.forEach(row -> assertEquals(columns, row.split(",", -1).length, row));
    assertTrue(rows.get(1).contains(",,,,"), rows.get(1));
  }

  @Test
  void filesOfAPairAreToldApart() throws Exception {
    Path out = write(PaperRehearsal.report(true, 2));
    for (String name :
        List.of("sections_right.svg", "outlines_left.png", "shapes/step_02_left.obj")) {
      assertTrue(Files.exists(out.resolve(name)), name);
    }
  }

  @Test
  void cancelledNothingIsWritten() throws Exception {
    Path out = folder.resolve("out");
    try (ResultFolder files = new ResultFolder(out)) {
      RehearsalFiles.write(files, PaperRehearsal.report(true, 1), () -> true);
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(0, left.count());
    }
  }

  @Test
  void aLaterRunLeavesNothingOfAnEarlierOneButStrangersAlone() throws Exception {
    Path out = write(PaperRehearsal.report(true, 2));
    Files.writeString(out.resolve("mine.txt"), "mine");
    try (ResultFolder files = new ResultFolder(out)) {
      RehearsalFiles.write(files, PaperRehearsal.report(true, 1), () -> false);
      files.commit(RehearsalFiles::isOurs);
    }
    List<String> names = files(out).stream().map(f -> out.relativize(f).toString()).toList();
    assertTrue(names.contains("mine.txt") && names.contains("sections.svg"), names::toString);
    assertTrue(names.stream().noneMatch(n -> n.contains("_left")), names::toString);
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(1, left.count());
    }
  }
}
