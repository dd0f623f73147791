package auricle.modelfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadModelTest {
  static final String GOOD =
      """
      format: auricle-model/1
      title: strip
      mesh:
        strip: {length_mm: 10, width_mm: 1, divisions: [8, 1]}
      section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}
      supports:
        - clamp: {where: start}
      loads:
        - line_force: {where: end, force_n_per_mm: [0, 0, 4]}
      solve:
        load_steps: {count: 4}
      probes:
        tip: {displacement: {where: end, direction: z}}
      """;

  private static final ModelReader READER = new ModelReader(ModelSchema.load());

  private static List<Finding> findings(String text) {
    return assertThrows(
            BadInputException.class,
            () -> READER.read("m.yaml", text, ModelFolder.of(Path.of("."))))
        .findings();
  }

  private static void assertOne(String text, String where, String... words) {
    List<Finding> findings = findings(text);
    assertEquals(1, findings.size(), findings::toString);
    String line = findings.get(0).line();
    assertTrue(line.startsWith("m.yaml " + where), line);
    for (String word : words) {
      assertTrue(line.contains(word), line);
    }
  }

  /** One slip each: what is replaced, by what, where it is told, and the word that must be told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "poisson: 0|poison: 0|line 5 column 48, section.poison|Did you mean 'poisson'?",
        "thickness_mm: 0.1|thickness_cm: 0.01|line 5 column 11, section.thickness_cm|'thickness_mm'",
        "thickness_mm: 0.1|thickness_mm: 0|line 5 column 11, section.thickness_mm|more than 0",
        "thickness_mm: 0.1|thickness_mm: -0.1|line 5 column 11, section.thickness_mm|more than 0",
        "thickness_mm: 0.1|thickness_mm: 0.1 mm|line 5 column 11, section.thickness_mm|key says its unit",
        "thickness_mm: 0.1|thickness_mm: .1|line 5 column 11, section.thickness_mm|0.5",
        "young_mpa: 1.2e6|young_mpa: -5|line 5 column 30, section.young_mpa|more than 0",
        "young_mpa: 1.2e6|young_mpa: 0|line 5 column 30, section.young_mpa|more than 0",
        "young_mpa: 1.2e6|young_mpa: 1e999|line 5|finite",
        "young_mpa: 1.2e6|young_mpa: .nan|line 5|not YAML",
        "poisson: 0|poisson: 0.7|line 5 column 48, section.poisson|at most 0.5",
        "poisson: 0}|poisson: 0, poisson: 0}|line 5|second time",
        "[0, 0, 4]|[0, 4]|line 9 column 30, loads[0].line_force.force_n_per_mm|at least 3",
        "[0, 0, 4]|[0, 0, up]|line 9 column 53, loads[0].line_force.force_n_per_mm[2]|a number",
        "format: auricle-model/1|format: auricle-model/9|line 1 column 1, format|auricle-model/1",
        "clamp: {where: start}|clmap: {where: start}|line 7 column 5, supports[0].clmap|'clamp'",
        "clamp: {where: start}|clamp: {}|line 7 column 5, supports[0].clamp|'where' is missing",
        "direction: z|direction: w|line 13 column 36|x, y, z",
        "strip: {|stripe: {|line 4 column 3, mesh.stripe|'strip'",
        "divisions: [8, 1]|divisions: [0, 1]|line 4 column 51, mesh.strip.divisions[0]|at least 1",
        "divisions: [8, 1]|divisions: [8, 1], pattern: croosed|line 4|'crossed'",
        "count: 4|count: 4.5|line 11 column 16, solve.load_steps.count|whole number",
        "count: 4|tolerance: 1e-6|line 11 column 3, solve.load_steps|neither factors",
        "title: strip|title: *strip|line 2|alias",
        "  tip: {|  1tip: {|line 13 column 3, probes.1tip|letters, digits",
        "tip: {displacement|tip: {displacment|line 13 column 9, probes.tip.displacment|'displacement'",
        "line_force: {where: end, force_n_per_mm: [0, 0, 4]}|point_force: {where: end, constant: true}|line 9 column 5, loads[0].point_force|neither total_n nor each_n",
        "line_force: {where: end, force_n_per_mm: [0, 0, 4]}|point_force: {where: end, total_n: [0, 0, 4], each_n: [0, 0, 1]}|line 9 column 5, loads[0].point_force|total_n beside each_n",
        "clamp: {where: start}|fix: {where: start}|line 7 column 5, supports[0].fix|neither directions nor rotation",
        "young_mpa: 1.2e6, |  |line 5 column 1, section|'young_mpa' is missing",
      })
  void everySlipIsToldOnceWithItsPlace(String good, String bad, String where, String word) {
    assertTrue(GOOD.contains(good), good);
    assertOne(GOOD.replace(good, bad == null ? "" : bad), where, word);
  }

  @Test
  void allSlipsAreToldAtOnce() {
    String text = GOOD.replace("poisson: 0", "poison: 0").replace("count", "cuont");
    assertEquals(2, findings(text).size());
    assertTrue(findings(text).get(0).line().contains("Did you mean 'poisson'?"));
    assertTrue(findings(text).get(1).line().contains("Did you mean 'count'?"));
  }

  @Test
  void aMissingPartIsNamed() {
    String text = GOOD.replace("section: {thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}\n", "");
    assertOne(text, "line 1 column 1", "'section' is missing");
  }

  @Test
  void anEmptyTextAndALooseBracketAreRefused() {
    assertOne("", "line 1 column 1", "nothing in the file");
    assertOne("# a note alone\n", "line 1 column 1", "nothing in the file");
    assertOne("mesh: [1, 2\nloads: 3\n", "line 2", "not YAML", "expected ',' or ']'");
    assertOne(GOOD + "---\na: 1\n", "line 15", "second document");
  }

  @Test
  void aFileThatCannotBeReadIsRefused(@TempDir Path folder) throws Exception {
    assertThrows(BadInputException.class, () -> READER.read(folder.resolve("none.yaml")));
    Path bytes = folder.resolve("bytes.yaml");
    Files.write(bytes, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
    assertThrows(BadInputException.class, () -> READER.read(bytes));
    assertThrows(BadInputException.class, () -> READER.read(folder));
  }

  @Test
  void aTableThatIsMissingOrLacksAColumnIsRefused(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("t.csv"), "# note\nload,w\n0,0\n0.5,1\n");
    String text =
        GOOD.replace("count: 4", "from_table: {file: t.csv, column: laod}")
            + "expected:\n"
            + "  - {probe: tip, table: {file: u.csv, value_column: w, over_column: load},"
            + " tolerance: {relative: 0.01}, source: nobody, confidence: computed}\n";
    BadInputException bad =
        assertThrows(
            BadInputException.class, () -> READER.read("m.yaml", text, ModelFolder.of(folder)));
    assertTrue(bad.toString().contains("Did you mean 'load'?"), bad.toString());
    assertTrue(bad.toString().contains("cannot read u.csv"), bad.toString());
  }
}
