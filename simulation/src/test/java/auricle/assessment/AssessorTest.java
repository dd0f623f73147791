package auricle.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Level;
import auricle.measurement.Evenness;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.plan.EarCase;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.SkinStrip;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AssessorTest {
  private static final Measures NORMAL = ear(14, 17, 18, 15, 106, 106, 31, 10.7, 0, 11);

  @Test
  void aNormalEarHasNoFaultAndNothingToBewareOf() {
    Assessment assessment = assess(NORMAL, NORMAL, List.of(), List.of());
    assertTrue(assessment.faults().isEmpty());
    assertTrue(assessment.cautions().isEmpty());
  }

  @Test
  void thirdsAreAtFaultByTheMeasurementThatSaysSo() {
    Measures prominent = ear(22, 25, 21, 24, 135, 110, 45, 17, 0, 11);
    List<Fault> faults = assess(prominent, NORMAL, List.of(), List.of()).faults();
    assertEquals(
        List.of(
            Figure.FOLD_ANGLE_UPPER,
            Figure.HELIX_MASTOID_UPPER,
            Figure.BOWL_DEPTH,
            Figure.HELIX_MASTOID_MIDDLE,
            Figure.AURICULOCEPHALIC_ANGLE,
            Figure.LOBULE_MASTOID),
        faults.stream().map(Fault::figure).toList());
    assertEquals(Level.LOBULE, faults.get(5).level());
    faults.forEach(fault -> assertFalse(fault.limit().source().isBlank()));
  }

  /** Elements of Morphology calls an ear protruding above 20 mm. */
  @Test
  void whatWasMeasuredAtALimitIsNotBeyondIt() {
    Measures shaped = ear(20.04, 20.2, 18, 15, 106, 106, 31, 10.7, 0, 11);
    List<Fault> faults = assess(shaped, NORMAL, List.of(), List.of()).faults();
    assertEquals(List.of(Figure.HELIX_MASTOID_MIDDLE), faults.stream().map(Fault::figure).toList());
  }

  @Test
  void balanceIsToldLevelByLevel() {
    Measures after = ear(11, 24, 21, 15, 95, 95, 25, 10, 0, 10);
    List<Balance> balance = assess(NORMAL, after, List.of(), List.of()).balance();
    Balance middle =
        balance.stream().filter(b -> b.figure() == Figure.HELIX_MASTOID_MIDDLE).findFirst().get();
    assertFalse(middle.met());
    assertEquals("6.0 mm too far out", middle.words());
    assertTrue(balance.get(0).met());
  }

  @Test
  void aResultToBewareOfSaysSoInWords() {
    Measures after = ear(12, 22, 13, 18, 90, 90, 25, 10, 18, 3);
    Assessment assessment = assess(NORMAL, after, List.of(skin()), List.of());
    for (CautionKind kind :
        List.of(
            CautionKind.HIDDEN_HELIX,
            CautionKind.POLES_OVERCORRECTED,
            CautionKind.LOBULE_LEFT_BEHIND,
            CautionKind.EFFACED_SULCUS,
            CautionKind.SKIN_ALONE)) {
      assertTrue(assessment.warnsOf(kind), kind.key());
    }
    assertFalse(assessment.warnsOf(CautionKind.MIDDLE_OVERCORRECTED));
    assertEquals(
        "From the front the antihelix hides 18.0 mm of the helix, more than 3.0",
        assessment.cautions().get(0).words());
  }

  @Test
  void kinksThatAreNewAreCounted() {
    Evenness kinked = new Evenness(3, 60, 1);
    Measures n = NORMAL;
    Measures after =
        new Measures(
            n.helixMastoidUpper_mm(),
            n.helixMastoidMiddle_mm(),
            n.helixMastoidLower_mm(),
            n.lobuleMastoid_mm(),
            n.foldAngleUpper_deg(),
            n.foldAngleMiddle_deg(),
            n.auriculocephalicAngle_deg(),
            n.bowlDepth_mm(),
            n.helicalShowUpper_mm(),
            n.helicalShowMiddle_mm(),
            n.hiddenHelixLength_mm(),
            n.sulcus_mm(),
            List.of(),
            kinked,
            n.fold(),
            63,
            33);
    List<Caution> cautions = assess(n, after, List.of(skin()), List.of()).cautions();
    assertEquals(
        "The line of fold or rim is broken; kinks that were not there before: 1, more than 0",
        cautions.get(0).words());
  }

  @Test
  void threadsNearTheirLimitsAreNamed() {
    List<ThreadLoad> threads =
        List.of(new ThreadLoad("upper fold", 4, 5.88, 13.5), new ThreadLoad("lower", 1, 5.88, 13));
    Assessment assessment = assess(NORMAL, NORMAL, List.of(), threads);
    assertEquals(1, assessment.cautions().size());
    assertEquals(CautionKind.TENSION_NEAR_KNOT_PULL, assessment.cautions().get(0).kind());
    assertEquals("upper fold", assessment.cautions().get(0).where());
  }

  @Test
  void sidesAreHeldAgainstEachOtherAtEveryLevel() {
    Measures left = ear(14, 21, 18, 15, 106, 106, 31, 10.7, 0, 11);
    List<SideDifference> sides = Assessor.sides(NORMAL, left, Target.USUAL_SIDE_DIFFERENCE_MM);
    assertEquals(4, sides.size());
    assertFalse(sides.get(1).within());
    assertTrue(sides.get(0).within());
    assertEquals("memory", sides.get(0).limit().confidence());
  }

  @Test
  void earsThatDifferAreACaution() {
    Measures left = ear(14, 21, 18, 15, 106, 106, 31, 10.7, 0, 11);
    List<SideDifference> sides = Assessor.sides(NORMAL, left, Target.USUAL_SIDE_DIFFERENCE_MM);
    Assessment alone = assess(NORMAL, NORMAL, List.of(), List.of());
    assertFalse(alone.warnsOf(CautionKind.SIDES_DIFFER));
    assertTrue(alone.with(sides).warnsOf(CautionKind.SIDES_DIFFER));
    assertEquals(alone.cautions(), alone.with(sides.subList(0, 1)).cautions());
  }

  @Test
  void aThreadThatCarriesNothingIsNamed() {
    List<ThreadLoad> threads =
        List.of(new ThreadLoad("upper", 0.3, 5.88, 13.5), new ThreadLoad("lower", 0, 5.88, 13));
    List<Caution> cautions = assess(NORMAL, NORMAL, List.of(), threads).cautions();
    assertEquals(1, cautions.size());
    assertEquals(CautionKind.SLACK_THREAD, cautions.get(0).kind());
    assertEquals("lower", cautions.get(0).where());
  }

  @Test
  void lessThanTheLastDecimalBeyondATargetIsAtItsEdge() {
    Measures after = ear(11, 18.04, 21, 15, 95, 95, 25, 10, 0, 10);
    Balance middle =
        assess(NORMAL, after, List.of(), List.of()).balance().stream()
            .filter(b -> b.figure() == Figure.HELIX_MASTOID_MIDDLE)
            .findFirst()
            .orElseThrow();
    assertEquals("at the edge", middle.words());
    assertTrue(middle.metAsShown() && !middle.met());
  }

  @Test
  void everyLimitHasASourceAndAConfidence() {
    for (Limit limit : Limits.shipped().all()) {
      assertFalse(limit.source().isBlank(), limit.key());
      assertTrue(
          List.of("seen", "2nd", "memory", "derived", "practice", "convention")
              .contains(limit.confidence()),
          limit.key());
    }
  }

  private static Assessment assess(
      Measures before, Measures after, List<Operation> operations, List<ThreadLoad> threads) {
    TissueChoice tissue = new TissueChoice(Map.of(), Map.of(), Optional.empty());
    EarCase ear =
        new EarCase(EarMeasurements.normalAdult(), tissue, new Plan(operations), Target.usual());
    return Assessor.assess(ear, before, after, threads);
  }

  private static SkinStrip skin() {
    return SkinStrip.usual("skin");
  }

  private static Measures ear(
      double upper,
      double middle,
      double lower,
      double lobule,
      double foldUpper,
      double foldMiddle,
      double angle,
      double bowl,
      double hidden,
      double sulcus) {
    Evenness even = new Evenness(3, 60, 0);
    return new Measures(
        upper,
        middle,
        lower,
        lobule,
        foldUpper,
        foldMiddle,
        angle,
        bowl,
        4,
        4,
        hidden,
        sulcus,
        List.of(),
        even,
        even,
        63,
        33);
  }
}
