package auricle.rehearsal;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.measurement.Figure;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/** Rates from the stiffness at rest are those that whole rehearsals give by differences. */
class ReactionsTest {
  private static final double STEP_MM = 0.02;

  private static EarCase ear(double gap_mm) {
    Plan plan =
        Plan.of(FoldSuture.square("fold", 68, 7, -6, 8, new Tie.Gap(gap_mm), "polyester_4_0"));
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

  @Test
  void theRateByAGapIsThatOfWholeRehearsals() throws BadInputException {
    LiveEar live =
        LiveEar.of(
            ear(9), RehearsalSettings.tied(), MaterialTables.shipped(), RehearsalWatcher.SILENT);
    Reaction reaction =
        live.reactions(RehearsalWatcher.SILENT).stream()
            .filter(r -> r.dose().equals("gap_mm"))
            .findFirst()
            .orElseThrow();
    double more = upper(live.rerun(ear(9 + STEP_MM), RehearsalWatcher.SILENT));
    double less = upper(live.rerun(ear(9 - STEP_MM), RehearsalWatcher.SILENT));
    Check.within(
        0.05,
        reaction.rates().getOrDefault(Figure.HELIX_MASTOID_UPPER, Double.NaN),
        (more - less) / (2 * STEP_MM),
        "central difference of whole rehearsals, own value");
  }

  private static double upper(RehearsalResult result) {
    return result.after().measures().helixMastoidUpper_mm();
  }
}
