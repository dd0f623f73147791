package auricle.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Level;
import auricle.diagnostics.Finding;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanTest {
  private static final Operation A = Scoring.usual("a");
  private static final Operation B = Operations.foldSuture().withName("b");
  private static final Operation C = BowlStrip.usual("c");

  private static List<Finding> findings(Operation... operations) {
    return new EarCase(
            EarMeasurements.normalAdult(),
            TissueChoice.standard(),
            Plan.of(operations),
            Target.usual())
        .findings("");
  }

  private static void assertWarned(String words, Operation... operations) {
    List<Finding> found = findings(operations);
    assertEquals(1, found.size(), found::toString);
    assertFalse(found.get(0).isError());
    assertTrue(found.get(0).line().contains(words), found.get(0)::line);
  }

  @Test
  void editsGiveANewPlanAndLeaveTheOldOne() {
    Plan plan = Plan.of(A, B);
    assertEquals(List.of(A, B, C), plan.add(C).operations());
    assertEquals(List.of(C, A, B), plan.add(0, C).operations());
    assertEquals(List.of(B), plan.remove(0).operations());
    assertEquals(List.of(B, C, A), plan.add(C).move(0, 2).operations());
    assertEquals(List.of(A, C), plan.replace(1, C).operations());
    assertEquals(List.of(B), plan.enable(0, false).enabled());
    assertEquals(
        0.3,
        plan.withDose(0, "depth_fraction", 0.3).operations().get(0).dose("depth_fraction").value());
    assertEquals(List.of(A, B), plan.operations());
  }

  @Test
  void operationsAreFoundByNameAndKind() {
    Plan plan = Plan.of(A, B);
    assertEquals(B, plan.find("b").orElseThrow());
    assertEquals(List.of(B), plan.enabled(FoldSuture.class));
    assertEquals("a 2", plan.freeName("a"));
    assertEquals("d", plan.freeName("d"));
  }

  @Test
  void aNameStandsOnceInAPlan() {
    List<Finding> found = Plan.of(A, B, C.withName("a")).findings("/plan");
    assertEquals(1, found.size());
    assertEquals("/plan/2/bowl_strip/name", found.get(0).where());
  }

  @Test
  void aSoundPlanNeedsNoWords() {
    assertEquals(List.of(), findings(A, B, C));
  }

  @Test
  void theTradeSpeaksToAPlanAsAWhole() {
    assertWarned("nothing is done");
    assertWarned("nothing is done", A.withEnabled(false));
    assertWarned("scoring without fold sutures", A);
    assertWarned("a skin strip alone", SkinStrip.usual("s"));
    assertWarned("a bolster without", Bolster.usual("p"));
    assertWarned(
        "a concha-mastoid suture alone", ConchaMastoidSuture.usual("m", new Tie.Tension(0.5), "t"));
    assertWarned("before 'b'", LobuleSuture.usual("l", new Tie.Gap(8), "t"), B);
    assertWarned("edges show", B, FullThicknessIncision.usual("f"));
    assertWarned("8 mm", BowlStrip.usual("w").withDose("width_mm", 10));
  }

  @Test
  void theSpanOfASutureIsHeldAgainstTheThickness() {
    Tie tie = new Tie.Gap(6);
    assertWarned("unstable", FoldSuture.square("w", 75, 8, -8, 14, tie, "t"));
    assertWarned("no effect", FoldSuture.square("n", 75, 1, -1, 14, tie, "t"));
  }

  @Test
  void aTargetSaysWhereItIsWrong() {
    Target usual = Target.usual();
    assertEquals(List.of(), usual.findings("/target"));
    Target wrong =
        new Target(
            Map.of(Level.UPPER, Range.of(12, 10)),
            usual.foldAngleUpper_deg(),
            Range.of(90, 400),
            usual.auriculocephalicAngle_deg(),
            usual.helicalShow_mm(),
            Double.NaN);
    assertEquals(6, wrong.findings("/target").size(), wrong.findings("/target")::toString);
  }

  @Test
  void aRangeSaysHowFarBeyondItAValueLies() {
    Range range = Range.of(10, 12);
    assertEquals(0, range.beyond(11));
    assertEquals(2, range.beyond(14));
    assertEquals(-3, range.beyond(7));
    assertTrue(Double.isNaN(range.beyond(Double.NaN)));
  }

  @Test
  void aPressIsHeldAgainstItsBounds() {
    assertEquals(List.of(), new PressTest(80, 8, 0.12).findings("/p"));
    assertEquals(3, new PressTest(120, 80, 12).findings("/p").size());
  }
}
