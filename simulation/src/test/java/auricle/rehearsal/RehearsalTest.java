package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.BadInputException;
import auricle.plan.BowlStrip;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.LobuleSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import org.junit.jupiter.api.Test;

/** A whole plan, from an ear to its figures. */
class RehearsalTest {
  private static final String THREAD = "polyester_4_0";

  private static EarCase openFold(Plan plan) {
    EarMeasurements ear =
        EarMeasurements.normalAdult()
            .withHelixMastoidUpper_mm(19)
            .withHelixMastoidMiddle_mm(20)
            .withHelixMastoidLower_mm(19)
            .withAuriculocephalicAngle_deg(36)
            .withFoldAngleUpper_deg(132)
            .withFoldAngleMiddle_deg(128);
    return new EarCase(ear, TissueChoice.standard(), plan, Target.usual());
  }

  private static Plan wholePlan() {
    Tie tie = new Tie.Gap(11);
    return Plan.of(
        Scoring.usual("scoring"),
        FoldSuture.square("upper fold", 74, 7, -6, 8, tie, THREAD),
        FoldSuture.square("second fold", 66, 7, -6, 8, tie, THREAD),
        FoldSuture.square("third fold", 58, 7, -6, 8, tie, THREAD),
        FoldSuture.square("lower fold", 50, 7, -6, 8, tie, THREAD),
        BowlStrip.usual("bowl strip"),
        LobuleSuture.usual("lobule", new Tie.Gap(12), THREAD));
  }

  @Test
  void aWholePlanComesToRestAtEveryStepAndIsMeasured() throws BadInputException {
    RehearsalResult result =
        Rehearsal.run(openFold(wholePlan()), RehearsalSettings.tied(), RehearsalWatcher.SILENT);
    result
        .steps()
        .forEach(s -> assertTrue(s.outcome().converged(), s.label() + ": " + s.outcome()));
    assertEquals(8, result.steps().size());
    assertTrue(
        result.after().measures().helixMastoidUpper_mm()
            < result.before().measures().helixMastoidUpper_mm() - 1);
    assertEquals(5, result.after().threads().size());
    assertFalse(result.materialRows().isEmpty());
  }

  @Test
  void theSameCaseGivesTheSameBits() throws BadInputException {
    EarCase ear =
        openFold(Plan.of(FoldSuture.square("fold", 70, 7, -6, 8, new Tie.Tension(0.2), THREAD)));
    RehearsalResult first = Rehearsal.run(ear, RehearsalSettings.tied(), RehearsalWatcher.SILENT);
    RehearsalResult second = Rehearsal.run(ear, RehearsalSettings.tied(), RehearsalWatcher.SILENT);
    assertEquals(first.after().measures(), second.after().measures());
    assertEquals(first.after().threads(), second.after().threads());
  }

  @Test
  void aCancelledRehearsalEndsAndSaysSo() throws BadInputException {
    RehearsalWatcher impatient =
        new RehearsalWatcher() {
          @Override
          public void progress(String words, double share) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    RehearsalResult result =
        Rehearsal.run(openFold(wholePlan()), RehearsalSettings.tied(), impatient);
    assertTrue(result.cancelled());
    assertFalse(result.converged());
  }
}
