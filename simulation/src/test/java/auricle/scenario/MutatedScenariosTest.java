package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Scenarios with random slips: each is refused in words or read; nothing else happens. */
class MutatedScenariosTest {
  private static final int COUNT = 2000;
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
          "[0, 0]",
          "true",
          "",
          ":",
          "ear",
          "right",
          "- 1",
          "before",
          "\t",
          "~",
          "#",
          "{a: 1}",
          "[[1]]",
          "plan",
          "name");

  private static final ScenarioReader READER = ScenarioReader.shipped();

  @Test
  void eachIsRefusedInWordsOrRead() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20261125L);
    int refused = 0;
    for (int i = 0; i < COUNT; i++) {
      String text = mutant(i % 2 == 0 ? BadScenarioTest.GOOD : BadScenarioTest.PAIR, random);
      text = random.nextInt(3) == 0 ? mutant(text, random) : text;
      try {
        assertFalse(READER.read("m.yaml", text).scenario().ears().isEmpty());
      } catch (BadInputException e) {
        refused++;
        e.findings().forEach(f -> assertTrue(f.where().startsWith("m.yaml line"), f::line));
        assertTrue(e.findings().stream().anyMatch(f -> f.isError()), text);
      } catch (RuntimeException e) {
        throw new AssertionError("mutant " + i + ":\n" + text, e);
      }
    }
    assertTrue(refused > COUNT / 2, refused + " refused");
  }

  /** One run of letters, digits, dots and signs replaced by something else. */
  private static String mutant(String good, UniformRandomProvider random) {
    int start = good.indexOf('\n') + 1;
    int at = start + random.nextInt(good.length() - start - 1);
    while (at > start && !word(good.charAt(at))) {
      at--;
    }
    int from = at;
    int to = at + 1;
    while (from > start && word(good.charAt(from - 1))) {
      from--;
    }
    while (to < good.length() && word(good.charAt(to))) {
      to++;
    }
    return good.substring(0, from) + SLIPS.get(random.nextInt(SLIPS.size())) + good.substring(to);
  }

  private static boolean word(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '-';
  }
}
