package auricle.testing;

import auricle.anatomy.EarMeasurements;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.TissueChoice;

/** An ear with an open fold that stands out: invented numbers. */
public final class OpenFold {
  /** Row of the thread table that its sutures are of. */
  public static final String THREAD = "polyester_4_0";

  private OpenFold() {}

  /** The ear under a plan. */
  public static EarCase with(Plan plan) {
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
}
