package auricle.rehearsal;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeKnob;
import auricle.anatomy.ShapeParameters;

/**
 * An auricle from measurements: the knobs that are measurements themselves are set, the lean of
 * each third is chosen so that the rim is about as far from the head as was measured.
 */
final class EarShape {
  private EarShape() {}

  static Auricle of(EarMeasurements ear, MeshLevel mesh) {
    ShapeParameters shape =
        ShapeParameters.normalAdult()
            .withWithin(ShapeKnob.HEIGHT, ear.height_mm())
            .withWithin(ShapeKnob.WIDTH, ear.width_mm())
            .withWithin(ShapeKnob.BOWL_DEPTH, ear.bowlDepth_mm())
            .withWithin(ShapeKnob.FOLD_UPPER, ear.foldAngleUpper_deg())
            .withWithin(ShapeKnob.FOLD_MIDDLE, ear.foldAngleMiddle_deg())
            .withWithin(ShapeKnob.FOLD_LOWER, ear.foldAngleMiddle_deg());
    return Auricle.of(shape, mesh);
  }
}
