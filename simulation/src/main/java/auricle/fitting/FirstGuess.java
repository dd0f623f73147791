package auricle.fitting;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;

/**
 * A shape near to what was measured, from the profile as a chain of straight lines: floor, wall as
 * high as the bowl is deep, scapha, helix. The fit starts here, and what no measurement decides
 * stays here.
 */
final class FirstGuess {
  private static final double FLOOR = 2;
  private static final double HELIX = 4.3;
  private static final double SCAPHA = 8.5;
  private static final double STEEPEST = 0.85;
  private static final double FLATTEST = -0.5;

  private FirstGuess() {}

  /** The shape, each knob within its bounds. */
  static ShapeParameters of(EarMeasurements ear) {
    double upper = ear.foldAngleUpper_deg();
    double middle = ear.foldAngleMiddle_deg();
    double bowl = ear.bowlDepth_mm();
    return ShapeParameters.normalAdult()
        .withWithin(ShapeKnob.HEIGHT, ear.height_mm() * 1.04)
        .withWithin(ShapeKnob.WIDTH, ear.width_mm())
        .withWithin(ShapeKnob.BOWL_DEPTH, bowl * 1.04)
        .withWithin(ShapeKnob.FOLD_UPPER, upper)
        .withWithin(ShapeKnob.FOLD_MIDDLE, middle)
        .withWithin(ShapeKnob.FOLD_LOWER, middle)
        .withWithin(ShapeKnob.LEAN_UPPER, lean(ear.helixMastoidUpper_mm(), 0.9 * bowl, upper))
        .withWithin(ShapeKnob.LEAN_MIDDLE, lean(ear.helixMastoidMiddle_mm(), bowl, middle))
        .withWithin(ShapeKnob.LEAN_LOWER, lean(ear.helixMastoidLower_mm(), 0.9 * bowl, middle));
  }

  /** Lean that brings the helix out to a distance, deg. */
  private static double lean(double rim_mm, double bowl_mm, double fold_deg) {
    double rise = (rim_mm - FLOOR - bowl_mm - HELIX) / SCAPHA;
    double slope = Math.asin(Math.max(FLATTEST, Math.min(STEEPEST, rise)));
    return Math.toDegrees(slope) + (180 - fold_deg) / 2;
  }
}
