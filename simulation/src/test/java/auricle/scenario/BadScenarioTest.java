package auricle.scenario;

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

class BadScenarioTest {
  static final String GOOD =
      """
      format: auricle-scenario/1
      title: An open fold
      ear: {side: left, fold_angle_upper_deg: 135}
      tissue: {cartilage.modulus_mpa: 2.5}
      press_test: {level_percent: 80, depth_mm: 8, force_n: 0.12}
      plan:
        - scoring: {name: cuts, face: posterior, depth_fraction: 0.4}
        - fold_suture: {name: upper, level_percent: 75, bite_width_mm: 9, tie: {gap_mm: 6}}
        - lobule_suture: {name: lobule, tie: {tension_n: 0.5}}
      target: {helix_mastoid_upper_mm: [10, 14]}
      times: [1 day, 12 months]
      expected:
        no_cautions: [hidden_helix]
        figures:
          - {change_of: fold_angle_upper_deg, to: upper, sign: falls, because: it folds}
      """;

  static final String PAIR =
      """
      format: auricle-scenario/1
      ear: {based_on: normal_child}
      plan:
        - fold_suture: {level_percent: 75, tie: {gap_mm: 6}}
      right:
        ear: {fold_angle_upper_deg: 135}
      left:
        ear: {fold_angle_upper_deg: 130}
      """;

  private static final ScenarioReader READER = ScenarioReader.shipped();

  private static List<Finding> findings(String text) {
    return assertThrows(BadInputException.class, () -> READER.read("s.yaml", text)).findings();
  }

  private static void assertOne(String text, String where, String... words) {
    List<Finding> findings = findings(text).stream().filter(Finding::isError).toList();
    assertEquals(1, findings.size(), findings::toString);
    String line = findings.get(0).line();
    assertTrue(line.startsWith("s.yaml " + where), line);
    for (String word : words) {
      assertTrue(line.contains(word), line);
    }
  }

  @Test
  void theGoodOnesAreGood() throws BadInputException {
    assertEquals(List.of(), READER.read("s.yaml", GOOD).warnings());
    assertEquals(List.of(), READER.read("s.yaml", PAIR).warnings());
  }

  /** One slip each: what is replaced, by what, where it is told, and the word that must be told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "depth_fraction: 0.4|depth_fracton: 0.4|line 7 column 44, plan[0].scoring.depth_fracton|'depth_fraction'",
        "bite_width_mm: 9|bite_width_cm: 0.9|line 8 column 51, plan[1].fold_suture.bite_width_cm|'bite_width_mm'",
        "fold_angle_upper_deg: 135|fold_angle_upper_rad: 2.3|line 3 column 19|'fold_angle_upper_deg'",
        "depth_mm: 8|depth_mm: 8 mm|line 5 column 33, press_test.depth_mm|key says its unit",
        "depth_fraction: 0.4|depth_fraction: half|line 7 column 44|a number",
        "depth_fraction: 0.4|depth_fraction: '0.4'|line 7 column 44|a number",
        "depth_fraction: 0.4|depth_fraction: .4|line 7 column 44|0.5",
        "depth_fraction: 0.4|depth_fraction: 0.9|line 7 column 44|deeper is a full-thickness cut",
        "depth_fraction: 0.4|depth_fraction: .nan|line 7|.nan",
        "depth_fraction: 0.4|depth_fraction: 1e999|line 7|finite",
        "depth_fraction: 0.4|depth_fraction:|line 7 column 44|a number",
        "face: posterior|face: posterier|line 7|'posterior'",
        "face: posterior|face: posterior, face: anterior|line 7|second time",
        "name: upper|name: cuts|line 8 column 19, plan[1].fold_suture.name|every name once",
        "level_percent: 75|level_percent: 120|line 8 column 32, plan[1].fold_suture.level_percent|top of the helix",
        "level_percent: 75, |  |line 8 column 5, plan[1].fold_suture|'level_percent', or 'bites'",
        "level_percent: 75|level_percent: 75, scapha_from_fold_mm: -4|line 8|towards the rim",
        "level_percent: 75|level_percent: 75, concha_from_fold_mm: 4|line 8|towards the bowl",
        "bite_width_mm: 9|bite_width_mm: -9|line 8 column 51|upper and the lower bite",
        "tie: {gap_mm: 6}|tie: {gap_mm: 6, tension_n: 1}|line 8 column 69, plan[1].fold_suture.tie|one of the two",
        "tie: {gap_mm: 6}|tie: {}|line 8 column 69, plan[1].fold_suture.tie|gap_mm, tension_n",
        ", tie: {gap_mm: 6}||line 8 column 5, plan[1].fold_suture|'tie' is missing",
        "tie: {gap_mm: 6}|tie: 6|line 8 column 69, plan[1].fold_suture.tie|keys below it",
        "tie: {tension_n: 0.5}|tie: {tension_n: 50}|line 9 column 41, plan[2].lobule_suture.tie.tension_n|0.01 to 20 N",
        "- scoring:|- scorring:|line 7 column 5, plan[0].scorring|'scoring'",
        "- scoring:|- liposuction:|line 7 column 5, plan[0].liposuction|fold_suture",
        "- scoring: {|- {cauda_excision: {length_mm: 4}, scoring: {|line 8|not YAML",
        "side: left|side: lefft|line 3 column 7, ear.side|'left'",
        "fold_angle_upper_deg: 135|fold_angle_upper_deg: 235|line 3 column 19, ear.fold_angle_upper_deg|60 to 179 deg",
        "fold_angle_upper_deg: 135|name: A B|line 3 column 19, ear.name|no identity of a patient",
        "title: An open fold|date_of_birth: 2015-03-02|line 2 column 1, date_of_birth|no identity",
        "title: An open fold|patient: {first_name: A}|line 2 column 1, patient|no identity",
        "title: An open fold|titel: An open fold|line 2 column 1, titel|'title'",
        "auricle-scenario/1|auricle-scenario/2|line 1 column 1, format|auricle-scenario/1",
        "[10, 14]|[14, 10]|line 10 column 10, target.helix_mastoid_upper_mm|lesser value first",
        "[10, 14]|[10]|line 10 column 10, target.helix_mastoid_upper_mm|at least 2",
        "12 months]|12 moons]|line 11 column 16, times[1]|a number and days, weeks, months or years",
        "cartilage.modulus_mpa: 2.5|cartilage.modulus_mpa: [1]|line 4 column 10|a number or a text",
        "cartilage.modulus_mpa: 2.5|cartilage.modulus_mpa: 2500|line 4 column 10, tissue.cartilage.modulus_mpa|another unit",
        "cartilage.modulus_mpa: 2.5|cartilage.modulus_mpa: soft|line 4 column 10, tissue.cartilage.modulus_mpa|septum_dynamic",
        "cartilage.modulus_mpa: 2.5|cartilage.moduls_mpa: 2.5|line 4 column 10, tissue.cartilage.moduls_mpa|modulus_mpa",
        "level_percent: 75|level_percent: 75, thread: polyester_40|line 8 column 51, plan[1].fold_suture.thread|polyester_4_0",
        "change_of: fold_angle_upper_deg|change_of: fold_angle_uper_deg|line 15 column 8|'fold_angle_upper_deg'",
        "to: upper|to: uper|line 15 column 41, expected.figures[0].to|'upper'",
        "to: upper|at: upper|line 15 column 41, expected.figures[0].at|'from' and 'to'",
        "sign: falls, ||line 15 column 7, expected.figures[0]|no range, sign or other_side",
        "change_of: fold|figure: lobule_mastoid_mm, change_of: fold|line 15 column 7|several at once",
        "because: it folds|becuase: it folds|line 15 column 65|'because'",
        "no_cautions: [hidden_helix]|no_cautions: [hiden_helix]|line 13 column 17, expected.no_cautions[0]|'hidden_helix'",
        "no_cautions: [hidden_helix]|no_caution: [hidden_helix]|line 13 column 3|'no_cautions'",
      })
  void everySlipIsToldWithItsPlace(String good, String bad, String where, String word) {
    assertTrue(GOOD.contains(good), good);
    List<Finding> found = findings(GOOD.replace(good, bad == null ? "" : bad.strip()));
    assertTrue(
        found.stream()
            .anyMatch(f -> f.line().startsWith("s.yaml " + where) && f.line().contains(word)),
        () -> found.stream().map(Finding::line).toList().toString());
    assertTrue(found.stream().filter(Finding::isError).count() <= 2, found::toString);
  }

  @Test
  void everythingIsToldAtOnceWhateverFindsIt() {
    String text =
        GOOD.replace("depth_fraction: 0.4", "depth_fracton: 0.4")
            .replace("gap_mm: 6", "gap_mm: 600")
            .replace("side: left", "side: left, height_mm: 600, surname: A")
            .replace("[10, 14]", "[14, 10]")
            .replace("sign: falls", "sign: sinks");
    List<Finding> found = findings(text);
    assertEquals(
        6, found.size(), () -> String.join("\n", found.stream().map(Finding::line).toList()));
  }

  @Test
  void missingSectionsAreNamed() {
    assertOne("format: auricle-scenario/1\nplan: []\n", "line 1 column 1", "'ear' is missing");
    assertOne("format: auricle-scenario/1\near: {}\n", "line 1 column 1", "'plan' is missing");
    assertOne("ear: {}\nplan: []\n", "line 1 column 1", "'format' is missing");
  }

  @Test
  void textsThatAreNoScenarioAreRefused() {
    assertOne("", "line 1 column 1", "nothing in the file");
    assertOne("- 1\n- 2\n", "line 1 column 1", "keys below it");
    assertOne(GOOD.replace("  - scoring", "\t- scoring"), "line 7", "not YAML", "tab");
    assertOne(GOOD + "title: another\n", "line 16 column 1", "second time");
    assertOne(GOOD + "---\na: 1\n", "line 17", "second document");
  }

  @Test
  void aFileThatIsHugeOrNoTextIsRefused(@TempDir Path folder) throws Exception {
    Path huge = Files.writeString(folder.resolve("huge.yaml"), "#".repeat(1_100_000));
    BadInputException bad = assertThrows(BadInputException.class, () -> READER.read(huge));
    assertTrue(bad.findings().get(0).line().contains("at most 1 MB"), bad.toString());
    Path bytes = Files.write(folder.resolve("b.yaml"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertThrows(BadInputException.class, () -> READER.read(bytes));
    assertThrows(BadInputException.class, () -> READER.read(folder.resolve("none.yaml")));
    assertThrows(BadInputException.class, () -> READER.read(folder));
  }

  @Test
  void twoEarsOfOneSideAreRefused() {
    assertOne(PAIR.replace("left:", "right:"), "line 7 column 1", "'right' a second time");
    assertOne(
        PAIR.replace("{fold_angle_upper_deg: 130}", "{side: right}"),
        "line 8 column 9, left.ear.side",
        "two ears of different sides");
  }

  @Test
  void whatBothEarsShareIsToldOnce() {
    assertOne(
        PAIR.replace("gap_mm: 6", "gap_mm: 600"),
        "line 4 column 44, plan[0].fold_suture.tie.gap_mm",
        "60 mm");
    assertOne(
        PAIR.replace("{based_on", "{height_mm: 5, based_on"), "line 2 column 7, ear", "90 mm");
    assertOne(
        PAIR.replace("fold_angle_upper_deg: 130", "fold_angle_upper_deg: 13"),
        "line 8 column 9, left.ear",
        "179 deg");
  }

  @Test
  void allFourBitesAreCheckedAtTheirPlaces() {
    String bites =
        "bites: {scapha_upper: {level_percent: 80, from_fold_mm: 4},"
            + " scapha_lower: {level_percent: 70, from_fold_mm: -1},"
            + " concha_upper: {level_percent: 80, from_fold_mm: -4},"
            + " concha_lower: {level_percent: 70, from_fold_mm: -4}}";
    assertOne(
        GOOD.replace("level_percent: 75, bite_width_mm: 9", bites),
        "line 8 column 126, plan[1].fold_suture.bites.scapha_lower.from_fold_mm",
        "towards the rim");
    assertOne(
        GOOD.replace("bite_width_mm: 9", bites.replace("-1", "4")),
        "line 8",
        "one of the two forms");
  }
}
