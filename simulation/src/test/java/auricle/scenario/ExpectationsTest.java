package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.assessment.CautionKind;
import auricle.measurement.Figure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ExpectationsTest {
  /** Upper 20, after the suture 14, after all 12, at a year 14; middle 20, 19, 18, 18. */
  private record Made(double factor, boolean timed) implements Course {
    Made(double factor) {
      this(factor, true);
    }

    private static final Map<String, Double> UPPER =
        Map.of("before", 20.0, "s", 14.0, "after", 12.0, "12 months", 14.0);
    private static final Map<String, Double> MIDDLE =
        Map.of("before", 20.0, "s", 19.0, "after", 18.0, "12 months", 18.0);

    @Override
    public boolean converged() {
      return true;
    }

    @Override
    public Optional<Set<CautionKind>> cautions() {
      return timed ? Optional.of(Set.of(CautionKind.HIDDEN_HELIX)) : Optional.empty();
    }

    @Override
    public OptionalDouble figure(Figure figure, Moment moment) {
      Map<String, Double> values =
          figure == Figure.HELIX_MASTOID_UPPER
              ? UPPER
              : figure == Figure.HELIX_MASTOID_MIDDLE ? MIDDLE : Map.of();
      Double value = values.get(moment.words());
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(20 + factor * (value - 20));
    }

    @Override
    public OptionalDouble tension(String step, Moment moment) {
      return OptionalDouble.of(0.4 * factor);
    }
  }

  private static List<ExpectationResult> check(String expected) throws Exception {
    String text =
        """
        format: auricle-scenario/1
        ear: {}
        plan: [{fold_suture: {name: s, level_percent: 75, tie: {gap_mm: 6}}}]
        expected:
        """
            + expected.indent(2);
    ScenarioEar ear = ScenarioReader.shipped().read("s.yaml", text).scenario().ears().get(0);
    List<ExpectationResult> results =
        Expectations.check(ear, new Made(1), Optional.of(new Made(0.5)));
    return results.subList(1, results.size());
  }

  private static ExpectationResult one(String figure) throws Exception {
    List<ExpectationResult> results = check("figures: [{" + figure + ", because: x}]");
    assertEquals(1, results.size());
    return results.get(0);
  }

  @Test
  void whatIsMeantReadsAsASentence() throws Exception {
    String change = one("change_of: helix_mastoid_upper_mm, to: s, sign: falls").what();
    assertEquals("change of helix to mastoid, upper, from before to 's'", change);
    String ratio =
        one("figure: helix_mastoid_upper_mm, over: helix_mastoid_middle_mm, range: [0, 2]").what();
    assertEquals("helix to mastoid, upper divided by helix to mastoid, middle, after", ratio);
  }

  private static void assertMet(boolean met, double found, String figure) throws Exception {
    ExpectationResult result = one(figure);
    assertEquals(met, result.met(), result::toString);
    assertEquals(found, result.found(), 1e-12, result::toString);
  }

  @Test
  void aValueIsHeldAgainstItsRangeAtItsMoment() throws Exception {
    assertMet(true, 12, "figure: helix_mastoid_upper_mm, range: [10, 12]");
    assertMet(false, 20, "figure: helix_mastoid_upper_mm, at: before, range: [10, 12]");
    assertMet(true, 14, "figure: helix_mastoid_upper_mm, at: s, range: [14, 14]");
    assertMet(true, 14, "figure: helix_mastoid_upper_mm, at: 12 months, range: [13, 15]");
  }

  @Test
  void aChangeIsItsEndLessItsStart() throws Exception {
    assertMet(true, -8, "change_of: helix_mastoid_upper_mm, range: [-9, -7]");
    assertMet(true, -2, "change_of: helix_mastoid_upper_mm, from: s, sign: falls");
    assertMet(false, -2, "change_of: helix_mastoid_upper_mm, from: s, sign: rises");
    assertMet(false, -2, "change_of: helix_mastoid_upper_mm, from: s, sign: falls, by_at_least: 3");
  }

  @Test
  void aRatioIsThatOfTheValuesOrOfTheChanges() throws Exception {
    assertMet(
        true, 4, "change_of: helix_mastoid_upper_mm, over: helix_mastoid_middle_mm, range: [2, 5]");
    assertMet(
        true,
        12.0 / 18,
        "figure: helix_mastoid_upper_mm, over: helix_mastoid_middle_mm, range: [0, 1]");
  }

  @Test
  void aLossIsAShareOfTheCorrectionWhenTied() throws Exception {
    assertMet(true, 25, "loss_of: helix_mastoid_upper_mm, at: 12 months, range: [0, 45]");
  }

  @Test
  void sidesAreComparedByValueOrByMagnitudeOfTheChange() throws Exception {
    assertMet(true, 12, "figure: helix_mastoid_upper_mm, other_side: less");
    assertMet(true, -8, "change_of: helix_mastoid_upper_mm, other_side: more, by_at_least: 4");
    assertMet(false, -8, "change_of: helix_mastoid_upper_mm, other_side: more, by_at_least: 5");
    assertMet(true, 0.4, "tension_of: s, other_side: more");
  }

  @Test
  void whatDidNotComeOutIsNeverMet() throws Exception {
    for (String asked :
        List.of(
            "figure: sulcus_mm, range: [-1000, 1000]",
            "figure: helix_mastoid_upper_mm, at: 5 months, range: [0, 100]",
            "change_of: sulcus_mm, sign: falls",
            "change_of: sulcus_mm, sign: rises",
            "figure: sulcus_mm, other_side: more",
            "figure: sulcus_mm, other_side: less")) {
      assertFalse(one(asked).met(), asked);
      assertEquals("nothing", one(asked).foundWords());
    }
  }

  @Test
  void whatWasNotRehearsedOrAssessedIsLeftOut() throws Exception {
    ScenarioEar ear =
        ScenarioReader.shipped()
            .read("s.yaml", BadScenarioTest.GOOD.replace("to: upper", "to: 12 months"))
            .scenario()
            .ears()
            .get(0);
    assertEquals(3, Expectations.check(ear, new Made(1), Optional.empty()).size());
    assertEquals(1, Expectations.check(ear, new Made(1, false), Optional.empty()).size());
  }

  @Test
  void cautionsAreHeldBothWays() throws Exception {
    List<ExpectationResult> results =
        check("cautions: [hidden_helix, sharp_fold]\nno_cautions: [hidden_helix, sharp_fold]");
    assertEquals(
        List.of(true, false, false, true), results.stream().map(ExpectationResult::met).toList());
    assertFalse(Expectations.allMet(results));
    assertTrue(Expectations.allMet(results.subList(0, 1)));
  }
}
