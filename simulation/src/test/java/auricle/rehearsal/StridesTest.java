package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.BowlStrip;
import auricle.plan.FoldSuture;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Tie;
import auricle.testing.OpenFold;
import org.junit.jupiter.api.Test;

/** Ties that move much of the ear: led to rest in strides, or drawn in until they pull as asked. */
class StridesTest {
  /** Asked for at once and halved where that failed, the suture took 61. */
  private static final int FEW = 30;

  private static StepResult last(Operation... operations) throws BadInputException {
    return LiveEar.of(
            OpenFold.with(Plan.of(operations)),
            RehearsalSettings.tied(),
            MaterialTables.shipped(),
            RehearsalWatcher.SILENT)
        .result()
        .after();
  }

  @Test
  void aLobuleThatSwingsFarComesToRestInFewIterations() throws BadInputException {
    StepResult swung =
        last(
            FoldSuture.square("second fold", 66, 7, -6, 8, new Tie.Gap(9.25), OpenFold.THREAD),
            BowlStrip.usual("bowl strip"),
            LobuleSuture.usual("lobule", new Tie.Gap(12), OpenFold.THREAD));
    assertTrue(swung.outcome().converged(), swung.outcome().words());
    assertTrue(swung.outcome().iterations() <= FEW, swung.outcome().toString());
  }

  @Test
  void aPullThatCannotBeRaisedAtOnceIsMetByDrawingIn() throws BadInputException {
    StepResult pulled = last(LobuleSuture.usual("lobule", new Tie.Tension(0.4), OpenFold.THREAD));
    assertTrue(pulled.outcome().converged(), pulled.outcome().words());
    assertEquals(0.4, pulled.threads().get(0).tension_n(), 1e-5);
  }

  @Test
  void aPullThatTheEarDoesNotBearIsSaidWithWhatItBore() throws BadInputException {
    StepResult pulled =
        last(FoldSuture.square("tight", 80, 4, -4, 12, new Tie.Tension(2.1), OpenFold.THREAD));
    String words = pulled.outcome().words();
    assertFalse(pulled.outcome().converged(), words);
    assertTrue(words.contains("no rest at 2.10 N") && words.contains("at most"), words);
  }
}
