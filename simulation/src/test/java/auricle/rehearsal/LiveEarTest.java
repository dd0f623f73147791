package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/** An ear that is worked on gives what a rehearsal from the start gives. */
class LiveEarTest {
  private static final String OURS = "the same plan rehearsed from the start, own value";

  private static EarCase ear(double gap_mm) {
    Plan plan =
        Plan.of(
            Scoring.usual("scoring"),
            FoldSuture.square("upper", 74, 7, -6, 8, new Tie.Gap(11), "polyester_4_0"),
            FoldSuture.square("lower", 52, 7, -6, 8, new Tie.Gap(gap_mm), "polyester_4_0"));
    EarMeasurements open =
        EarMeasurements.normalAdult()
            .withHelixMastoidUpper_mm(19)
            .withHelixMastoidMiddle_mm(20)
            .withHelixMastoidLower_mm(19)
            .withAuriculocephalicAngle_deg(36)
            .withFoldAngleUpper_deg(132)
            .withFoldAngleMiddle_deg(128);
    return new EarCase(open, TissueChoice.standard(), plan, Target.usual());
  }

  private static RehearsalResult fromTheStart(double gap_mm) throws BadInputException {
    return Rehearsal.run(ear(gap_mm), RehearsalSettings.tied(), RehearsalWatcher.SILENT);
  }

  private static LiveEar live(double gap_mm) throws BadInputException {
    return LiveEar.of(
        ear(gap_mm), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
  }

  private static void same(double share, StepResult a, StepResult b) {
    Check.within(
        share, a.measures().helixMastoidUpper_mm(), b.measures().helixMastoidUpper_mm(), OURS);
    Check.within(
        share, a.measures().helixMastoidMiddle_mm(), b.measures().helixMastoidMiddle_mm(), OURS);
    Check.within(
        share, a.measures().foldAngleMiddle_deg(), b.measures().foldAngleMiddle_deg(), OURS);
  }

  @Test
  void aChangedPlanIsTheSameFromTheChangedStepAsFromTheStart() throws BadInputException {
    LiveEar live = live(10);
    RehearsalResult changed = live.rerun(ear(9), RehearsalWatcher.SILENT);
    assertTrue(changed.converged());
    same(1e-3, changed.after(), fromTheStart(9).after());
    assertEquals(live.result().after().measures(), changed.after().measures());
  }

  @Test
  void aTieTurnedAtTheEndIsNearlyWhatItIsFromTheStart() throws BadInputException {
    LiveEar live = live(10);
    StepResult turned = live.turn(ear(9.5), RehearsalWatcher.SILENT).orElseThrow();
    StepResult again = live.turn(ear(9), RehearsalWatcher.SILENT).orElseThrow();
    assertTrue(turned.outcome().converged());
    // threads tied later keep their lengths; from the start they are tied between other spans
    same(2e-2, again, fromTheStart(9).after());
  }
}
