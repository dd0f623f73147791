package auricle.modelfile;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.analysis.AnalysisResult;
import auricle.diagnostics.BadInputException;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Models with one random slip: each is refused in words or solved; nothing else happens. */
class MutatedModelsTest {
  private static final int COUNT = 600;
  private static final List<String> SLIPS =
      List.of(
          "0",
          "-1",
          "1.0e-300",
          "1.0e30",
          "null",
          "[]",
          "{}",
          "x",
          "''",
          "[0, 0, 0]",
          "true",
          "",
          ":",
          "start",
          "all",
          "- 1",
          "1.5",
          "\t",
          "~",
          "#");

  private static final String MODEL =
      SmallModels.strip(
          """
          sets:
            tip: {all_of: [end, {box: {low_mm: [0, 0, 0], high_mm: [10, 0.5, 1]}}]}
          supports:
            - clamp: {where: start}
            - fix: {where: tip, directions: [y]}
          loads:
            - point_force: {where: tip, total_n: [0, 0, 0.3]}
            - edge_moment: {where: end, axis: y, moment_n: -0.2}
            - thread:
                name: a
                points: [{anchor_mm: [10, 0.5, 5]}, {shell: {place_mm: [10, 0.5, 0]}}]
                stiffness_n: 0.1
                tie: {shorten_mm: 0.5}
          solve: {load_steps: {factors: [0.5, 1], most_iterations: 30}}
          probes:
            up: {displacement: {where: tip, direction: z}}
            bend: {section_moment: {where: all, component: along, axis: {along: x}}}
            pull: {tension: {thread: a}}
          """);

  @Test
  void eachIsRefusedInWordsOrSolved() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20261125L);
    int refused = 0;
    for (int i = 0; i < COUNT; i++) {
      String text = mutant(random);
      try {
        AnalysisResult result = SmallModels.run(text);
        assertFalse(result.outcome().isEmpty());
      } catch (BadInputException e) {
        refused++;
        e.findings().forEach(f -> assertTrue(f.where().startsWith("m.yaml"), f::line));
      } catch (RuntimeException e) {
        throw new AssertionError("mutant " + i + ":\n" + text, e);
      }
    }
    assertTrue(refused > COUNT / 2, refused + " refused");
  }

  /** One run of letters, digits, dots and signs replaced by something else. */
  private static String mutant(UniformRandomProvider random) {
    int at = MODEL.indexOf("mesh") + random.nextInt(MODEL.length() - MODEL.indexOf("mesh"));
    while (!word(MODEL.charAt(at))) {
      at--;
    }
    int from = at;
    int to = at + 1;
    while (word(MODEL.charAt(from - 1))) {
      from--;
    }
    while (word(MODEL.charAt(to))) {
      to++;
    }
    return MODEL.substring(0, from) + SLIPS.get(random.nextInt(SLIPS.size())) + MODEL.substring(to);
  }

  private static boolean word(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '-';
  }
}
