package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.plan.BowlStrip;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.LobuleSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.testing.OpenFold;
import org.junit.jupiter.api.Test;

/** A whole plan, from an ear to its figures. */
class RehearsalTest {
  private static Plan wholePlan() {
    Tie tie = new Tie.Gap(11);
    return Plan.of(
        Scoring.usual("scoring"),
        FoldSuture.square("upper fold", 74, 7, -6, 8, tie, OpenFold.THREAD),
        FoldSuture.square("second fold", 66, 7, -6, 8, tie, OpenFold.THREAD),
        FoldSuture.square("third fold", 58, 7, -6, 8, tie, OpenFold.THREAD),
        FoldSuture.square("lower fold", 50, 7, -6, 8, tie, OpenFold.THREAD),
        BowlStrip.usual("bowl strip"),
        LobuleSuture.usual("lobule", new Tie.Gap(12), OpenFold.THREAD));
  }

  @Test
  void aWholePlanComesToRestAtEveryStepAndIsMeasured() throws BadInputException {
    RehearsalResult result =
        Rehearsal.run(
            OpenFold.with(wholePlan()), RehearsalSettings.tied(), RehearsalWatcher.SILENT);
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
        OpenFold.with(
            Plan.of(
                FoldSuture.square("fold", 70, 7, -6, 8, new Tie.Tension(0.2), OpenFold.THREAD)));
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
        Rehearsal.run(OpenFold.with(wholePlan()), RehearsalSettings.tied(), impatient);
    assertTrue(result.cancelled());
    assertFalse(result.converged());
  }
}
