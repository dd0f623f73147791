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
import java.util.Objects;

/**
 * Finds the ear that has given measurements. The shape is fitted on the smooth surface and measured
 * on the mesh; what the mesh reads more or less is then made up for by a second fit. Least squares
 * may leave one measurement just outside its tolerance while others have room: rounds with {@link
 * Weights}, in which the shape may be an unusual one, then bring the worst down.
 */
public final class EarFitter {
  private static final List<Double> PULLS = List.of(0.3, 0.05, 0.02);
  private static final double CLOSE = 0.5;

  /** Rounds that share out among all measurements what one of them misses. */
  private static final int SHARING = 5;

  /**
   * Pull towards the first guess meanwhile: ten times weaker, the fit ends in shapes that pass
   * through themselves (6 of 100 ears drawn at random; none at 0.1 to 0.25).
   */
  private static final double SHARING_PULL = 0.25;

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
    Weights weights = Weights.equal(wanted.values().size());
    ShapeParameters guess = FirstGuess.of(ear);
    RestMeasurer measurer = new RestMeasurer(guess);
    ShapeParameters shape = guess;
    FittedEar best = null;
    for (int round = 0; round < PULLS.size() + SHARING; round++) {
      boolean sharing = round >= PULLS.size();
      double pull = sharing ? SHARING_PULL : PULLS.get(round);
      shape = new ShapeFit(aim, weights, measurer, guess, pull, sharing).from(shape);
      FittedEar fitted = measured(wanted, shape, level);
      best = best == null || better(fitted, best, sharing) ? fitted : best;
      if (worst(best) < CLOSE || (best.met() && round >= PULLS.size() - 1)) {
        break;
      }
      aim = wanted.less(fitted.measures(), measurer.measure(shape));
      weights = sharing ? weights.after(fitted.residuals()) : weights;
    }
    return Objects.requireNonNull(best);
  }

  /** Sharing out a miss puts more measurements off: only worth it where all of them end up met. */
  private static boolean better(FittedEar fitted, FittedEar best, boolean sharing) {
    return worst(fitted) < worst(best) && (!sharing || fitted.met());
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
