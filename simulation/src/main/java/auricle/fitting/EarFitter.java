package auricle.fitting;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.diagnostics.BadInputException;
import auricle.measurement.EarMeasurer;
import auricle.measurement.Measures;
import auricle.measurement.RestMeasurer;
import java.util.List;

/**
 * Finds the ear that has given measurements. The shape is fitted on the smooth surface and measured
 * on the mesh; what the mesh reads more or less is then made up for by a second fit.
 */
public final class EarFitter {
  private static final List<Double> PULLS = List.of(0.3, 0.05, 0.02);
  private static final double CLOSE = 0.5;

  private EarFitter() {}

  /**
   * The ear that meets every measurement within 0.5 mm or 2 deg, as measured on its mesh.
   *
   * @param ear what was measured
   * @param level how finely the ear is meshed
   * @param at JSON pointer of the measurements in their file, for findings; may be empty
   * @throws BadInputException if no shape has all of them: says which do not hold together and the
   *     nearest values that do
   */
  public static FittedEar fit(EarMeasurements ear, MeshLevel level, String at)
      throws BadInputException {
    FittedEar fitted = nearest(ear, level);
    if (!fitted.met()) {
      throw new BadInputException(new Conflict(fitted.residuals(), at).findings());
    }
    return fitted;
  }

  /** The ear whose measurements come nearest, met or not. */
  public static FittedEar nearest(EarMeasurements ear, MeshLevel level) {
    Wanted wanted = Wanted.of(ear);
    Wanted aim = wanted;
    ShapeParameters guess = FirstGuess.of(ear);
    RestMeasurer measurer = new RestMeasurer(guess);
    ShapeParameters shape = guess;
    FittedEar best = null;
    for (int round = 0; round < PULLS.size(); round++) {
      shape = new ShapeFit(aim, measurer, guess, PULLS.get(round)).from(shape);
      FittedEar fitted = measured(wanted, shape, level);
      best = best == null || worst(fitted) < worst(best) ? fitted : best;
      if (worst(best) < CLOSE) {
        break;
      }
      aim = wanted.less(fitted.measures(), measurer.measure(shape));
    }
    return java.util.Objects.requireNonNull(best);
  }

  private static FittedEar measured(Wanted wanted, ShapeParameters shape, MeshLevel level) {
    Auricle auricle = Auricle.of(shape, level);
    Measures measures = new EarMeasurer(auricle).measure(auricle.mesh().unknowns());
    return new FittedEar(auricle, measures, wanted.residuals(measures));
  }

  private static double worst(FittedEar fitted) {
    return fitted.residuals().stream().mapToDouble(r -> Math.abs(r.share())).max().orElse(0);
  }
}
