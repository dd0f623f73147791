package auricle.analysis;

import static auricle.modelfile.SmallModels.strip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.modelfile.SmallModels;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a schema cannot see. */
class BadAnalysisTest {
  private static final String GOOD =
      strip(
          """
          sets:
            tip: {nearest_mm: [10, 0, 0]}
          supports:
            - clamp: {where: start}
          loads:
            - point_force: {where: tip, total_n: [0, 0, 1]}
          solve: {linear: {}}
          probes:
            up: {displacement: {where: tip, direction: z}}
          """);

  private static List<Finding> findings(String text) {
    return assertThrows(BadInputException.class, () -> SmallModels.run(text)).findings();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "clamp: {where: start}|clamp: {where: strat}|line 8 column 13, supports[0].clamp.where|'start'",
        "where: tip, total|where: tipp, total|line 10 column 19, loads[0].point_force.where|'tip'",
        "clamp: {where: start}|fix: {where: start, directions: [x, y, z]}|line 7 column 1, supports|turn about an axis along y",
        "clamp: {where: start}|fix: {where: start, directions: [x, y], rotation: true}|supports|move along z",
        "clamp: {where: start}|fix: {where: tip, directions: [x, y, z]}|supports|3 motions",
        "total_n: [0, 0, 1]|total_n: [0, 0, 1], constant: true|none|none",
        "nearest_mm: [10, 0, 0]|plane: {point_mm: [99, 0, 0], normal: x}|line 6 column 3, sets.tip|nothing of the mesh",
        "nearest_mm: [10, 0, 0]|named: tip|sets.tip|made of itself",
        "divisions: [10, 1]|divisions: [10, 1], pattern: unaligned|none|none",
        "direction: z|direction: [0, 0, 0]|line 13 column 35, probes.up.displacement.direction|length zero",
        "poisson: 0}|poisson: 0, offset_mm: 0.1}|none|none",
        "poisson: 0}|poisson: 0}\\nother_sections: [{where: tip, thickness_mm: 1, young_mpa: 1, poisson: 0}]|other_sections[0].where|no triangle",
        "thickness_mm: 0.1, young_mpa: 1.2e6, poisson: 0}|plies: [{thickness_mm: 1, e1_mpa: 2, e2_mpa: 1, nu12: 0, g12_mpa: 1}]}|line 4 column 1, section|material axis",
        "clamp: {where: start}|symmetry: {where: start, normal: z}|supports[0].symmetry|at right angles",
        "divisions: [10, 1]|divisions: [4000, 4000]|line 3 column 44, mesh.strip.divisions|16000000 cells",
        "length_mm: 10|length_mm: 1.0e30|line 3 column 8, mesh.strip|without area",
        "strip: {length_mm: 10, width_mm: 1, divisions: [10, 1]|quadrilateral: {corners_mm: [[0, 0, 0], [10, 0, 0], [0, 1, 0], [10, 1, 0]], divisions: [10, 2]|mesh.quadrilateral|no normal",
        "strip: {length_mm: 10, width_mm: 1, divisions: [10, 1]|quadrilateral: {corners_mm: [[0, 0, 0], [10, 0, 0], [5, 1, 0], [0, 2, 0]], divisions: [8, 8], pattern: one_way|none|none",
        "strip: {length|cylinder: {radius_mm: 1, length|line 3|unknown key 'width_mm'",
      })
  void isToldWithItsPlace(String good, String bad, String where, String word)
      throws BadInputException {
    assertTrue(GOOD.contains(good), good);
    String text = GOOD.replace(good, bad.replace("\\n", "\n"));
    if (where.equals("none")) {
      assertTrue(SmallModels.run(text).converged());
      return;
    }
    String line = findings(text).get(0).line();
    assertTrue(line.startsWith("m.yaml line "), line);
    assertTrue(line.contains(where), line);
    assertTrue(line.contains(word), line);
  }

  @Test
  void everythingIsToldAtOnce() {
    String text =
        GOOD.replace("where: start", "where: strat")
                .replace("where: tip, direction", "where: top, direction")
            + "expected:\n  - {probe: upp, value: 1, tolerance: {relative: 0.1}, source: s, confidence: computed}\n";
    List<Finding> findings = findings(text);
    assertEquals(
        3,
        findings.stream().filter(f -> f.line().contains("Did you mean")).count(),
        findings::toString);
  }

  @Test
  void anUnstableShellIsAnOutcomeAndNotAResult() throws Exception {
    // a thread of no use and no load: a strip held at three corners only has a soft but real answer
    AnalysisResult result =
        SmallModels.run(
            GOOD.replace("linear: {}", "load_steps: {factors: [1.0e9], most_iterations: 3}"));
    assertTrue(!result.converged());
    StepResult last = result.steps().get(result.steps().size() - 1);
    assertTrue(!last.converged() && last.probes().get(0).isNaN(), last::toString);
  }
}
