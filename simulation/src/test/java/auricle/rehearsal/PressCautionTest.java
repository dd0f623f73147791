package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.diagnostics.BadInputException;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.PressTest;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import org.junit.jupiter.api.Test;

/** A press outside of what was published is told in the result. */
class PressCautionTest {
  private static RehearsalResult pressed(double force_n) throws BadInputException {
    TissueChoice standard = TissueChoice.standard();
    TissueChoice tissue = standard.withPress(new PressTest(70, 8, force_n));
    EarCase ear = new EarCase(EarMeasurements.normalAdult(), tissue, Plan.of(), Target.usual());
    return Rehearsal.run(ear, RehearsalSettings.tied(), RehearsalWatcher.SILENT);
  }

  @Test
  void aSoftPressIsToldWithTheRangeAndItsSource() throws BadInputException {
    RehearsalResult result = pressed(0.085);
    assertTrue(result.assessment().warnsOf(CautionKind.UNUSUAL_PRESS));
    Caution caution = result.assessment().cautions().get(0);
    assertTrue(caution.words().contains("softer"), caution.words());
    assertFalse(caution.limit().source().isBlank());
    assertEquals("N/mm", caution.limit().unit());
  }

  @Test
  void anOrdinaryPressIsNot() throws BadInputException {
    assertFalse(pressed(0.12).assessment().warnsOf(CautionKind.UNUSUAL_PRESS));
  }
}
