package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Side;
import auricle.assessment.CautionKind;
import auricle.diagnostics.BadInputException;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Operation;
import auricle.plan.Range;
import auricle.plan.Scoring;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ScenarioReaderTest {
  private static final ScenarioReader READER = ScenarioReader.shipped();

  private static Scenario read(String text) throws BadInputException {
    return READER.read("s.yaml", text).scenario();
  }

  private static EarCase only(String text) throws BadInputException {
    Scenario scenario = read(text);
    assertEquals(1, scenario.ears().size());
    return scenario.ears().get(0).ear();
  }

  @Test
  void theShortestUsefulScenarioIsANormalEarWithAPlan() throws Exception {
    EarCase ear =
        only(
            """
            format: auricle-scenario/1
            ear: {fold_angle_upper_deg: 132, fold_angle_middle_deg: 130}
            plan:
              - scoring: {}
              - fold_suture: {level_percent: 80, tie: {gap_mm: 6}}
              - fold_suture: {level_percent: 65, tie: {gap_mm: 6}}
            """);
    assertEquals(
        EarMeasurements.normalAdult().withFoldAngleUpper_deg(132).withFoldAngleMiddle_deg(130),
        ear.ear());
    assertEquals(Target.usual(), ear.target());
    assertEquals(
        List.of("posterior scoring", "fold suture", "fold suture 2"),
        ear.plan().operations().stream().map(Operation::name).toList());
    assertEquals(Scoring.usual("posterior scoring"), ear.plan().operations().get(0));
  }

  @Test
  void aFoldSutureInTheShortFormIsSquareToTheFold() throws Exception {
    EarCase ear =
        only(
            """
            format: auricle-scenario/1
            ear: {height_mm: 60}
            plan:
              - fold_suture:
                  name: upper
                  level_percent: 70
                  scapha_from_fold_mm: 5
                  concha_from_fold_mm: -3
                  bite_width_mm: 12
                  tie: {tension_n: 0.8}
                  thread: polypropylene_4_0
            """);
    FoldSuture expected =
        FoldSuture.square("upper", 70, 5, -3, 20, new Tie.Tension(0.8), "polypropylene_4_0");
    assertEquals(expected, ear.plan().operations().get(0));
  }

  @Test
  void everyKindTakesItsOwnDoses() throws Exception {
    for (String[] step :
        new String[][] {
          {"scoring", "face: anterior, kerf_mm: 0.2", "kerf_mm", "0.2"},
          {"full_thickness_incision", "from_fold_mm: -2", "from_fold_mm", "-2"},
          {"bowl_strip", "width_mm: 5, taper: 0.5", "taper", "0.5"},
          {"concha_mastoid_suture", "span_mm: 8, tie: {gap_mm: 9}", "gap_mm", "9"},
          {"lobule_suture", "cauda_from_tip_mm: 3, tie: {tension_n: 1}", "tension_n", "1"},
          {"cauda_excision", "length_mm: 7", "length_mm", "7"},
          {"skin_strip", "width_mm: 12", "width_mm", "12"},
          {"rim_wedge", "depth_mm: 8", "depth_mm", "8"},
          {"rim_shaving", "length_mm: 30, enabled: false", "length_mm", "30"},
          {"bolster", "gap_mm: 6, days: 10", "days", "10"}
        }) {
      String text =
          "format: auricle-scenario/1\near: {}\nplan: [{" + step[0] + ": {" + step[1] + "}}]\n";
      Operation operation = only(text).plan().operations().get(0);
      assertEquals(step[0], operation.kind());
      assertEquals(Double.parseDouble(step[3]), operation.dose(step[2]).value());
      assertEquals(!step[1].contains("enabled"), operation.enabled());
    }
  }

  @Test
  void theSchemaOffersTheDosesOfEveryKindAndNoOthers() {
    String schema = ScenarioSchema.text();
    for (Operation operation : ScenarioWriterTest.everyKind()) {
      String part =
          schema.substring(schema.indexOf("\"" + operation.kind() + "\": {\n   \"type\""));
      String tie = operation instanceof TiedOperation tied ? tied.tie().dose().key() : "no tie";
      operation.doses().stream()
          .map(d -> d.key().replaceFirst("^(scapha|concha)_(upper|lower)_", ""))
          .filter(key -> !key.equals(tie))
          .forEach(key -> assertTrue(part.contains("\"" + key + "\""), operation.kind() + key));
    }
  }

  @Test
  void anEarOfAPairHasItsOwnBeforeWhatBothShare() throws Exception {
    Scenario pair =
        read(
            """
            format: auricle-scenario/1
            title: Two ears
            ear: {based_on: normal_child, height_mm: 58, fold_angle_upper_deg: 130}
            tissue: {cartilage.modulus_mpa: 2, bite.4_0.tear_through_n: taper}
            target: {helix_mastoid_upper_mm: [9, 13], side_difference_mm: 2}
            plan: [{fold_suture: {name: s, level_percent: 75, tie: {gap_mm: 6}}}]
            expected: {converged: true, cautions: [hidden_helix]}
            times: [1 week, 6 months, 1 year]
            left:
              ear: {fold_angle_upper_deg: 140}
              tissue: {cartilage.modulus_mpa: 3}
              expected: {cautions: [sharp_fold]}
            right:
              plan: []
              target: {helix_mastoid_upper_mm: [8, 12]}
            """);
    assertEquals(List.of(7.0, 182.5, 365.0), pair.times_days());
    EarCase right = pair.ear(Side.RIGHT).orElseThrow().ear();
    EarCase left = pair.ear(Side.LEFT).orElseThrow().ear();
    assertEquals(Side.RIGHT, pair.ears().get(0).side());
    assertEquals(130, right.ear().foldAngleUpper_deg());
    assertEquals(140, left.ear().foldAngleUpper_deg());
    assertEquals(58, left.ear().height_mm());
    assertEquals(11, right.ear().age_years());
    assertTrue(right.plan().operations().isEmpty());
    assertEquals(1, left.plan().operations().size());
    assertEquals(Map.of("cartilage.modulus_mpa", 3.0), left.tissue().overrides());
    assertEquals(Map.of("bite.4_0.tear_through_n", "taper"), left.tissue().rows());
    assertEquals(
        Range.of(8, 12), right.target().helixMastoid_mm().get(auricle.anatomy.Level.UPPER));
    assertEquals(2, right.target().sideDifference_mm());
    assertEquals(
        List.of(CautionKind.HIDDEN_HELIX, CautionKind.SHARP_FOLD),
        pair.ear(Side.LEFT).orElseThrow().expected().cautions());
  }

  @Test
  void whatIsExpectedIsReadAsItStands() throws Exception {
    Scenario scenario =
        read(
            """
            format: auricle-scenario/1
            ear: {}
            plan: [{fold_suture: {name: s, level_percent: 75, tie: {gap_mm: 6}}}]
            expected:
              converged: false
              figures:
                - {figure: sulcus_mm, at: 12 months, range: [8, 20], because: x}
                - {change_of: helix_mastoid_upper_mm, from: s, to: after,
                   over: helix_mastoid_middle_mm, range: [1, 9], because: y}
                - {tension_of: s, sign: rises, by_at_least: 0.1, other_side: less, because: z}
                - {loss_of: helix_mastoid_upper_mm, at: 3 months, range: [0, 45], because: w}
            """);
    Expected expected = scenario.ears().get(0).expected();
    assertFalse(expected.converged());
    assertEquals(4, expected.figures().size());
    assertEquals(365, expected.figures().get(0).to().days());
    assertEquals("s", expected.figures().get(1).from().words());
    assertEquals("helix_mastoid_middle_mm", expected.figures().get(1).over());
    assertEquals(
        java.util.Optional.of(Expectation.OtherSide.LESS), expected.figures().get(2).otherSide());
    assertEquals(Expectation.Kind.LOSS, expected.figures().get(3).kind());
  }
}
