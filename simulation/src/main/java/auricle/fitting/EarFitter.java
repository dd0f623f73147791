package auricle.fitting;

import auricle.anatomy.Auricle;
import auricle.anatomy.EarMeasurements;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.diagnostics.BadInputException;
import auricle.measurement.Measures;
import auricle.measurement.RestMeasurer;
import java.util.List;
import java.util.Objects;

/**
 * Finds the ear that has given measurements. The shape is fitted and measured on the smooth
 * surface, so it is the same on every mesh. Where to read is chosen for the first guess; what this
 * reads more or less than places chosen for the shape that was found is then made up for by a
 * second fit. Least squares may leave one measurement just outside its tolerance while others have
 * room: rounds with {@link Weights}, in which the shape may be an unusual one, then bring the worst
 * down.
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
   * The ear that meets every measurement within 0.5 mm or 2 deg.
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
    Candidate last = Candidate.of(guess, wanted);
    Candidate best = null;
    for (int round = 0; round < PULLS.size() + SHARING; round++) {
      boolean sharing = round >= PULLS.size();
      double pull = sharing ? SHARING_PULL : PULLS.get(round);
      ShapeFit fit = new ShapeFit(aim, weights, measurer, guess, pull, sharing);
      last = Candidate.of(fit.from(last.shape), wanted);
      best = best == null || last.better(best, sharing) ? last : best;
      if (best.worst() < CLOSE || (best.met() && round >= PULLS.size() - 1)) {
        break;
      }
      aim = wanted.less(last.measures, measurer.measure(last.shape));
      weights = sharing ? weights.after(last.off) : weights;
    }
    return Objects.requireNonNull(best).meshed(level);
  }

  /**
   * A shape with what is measured on it.
   *
   * @param off how well each measurement is met
   */
  private record Candidate(ShapeParameters shape, Measures measures, List<FitResidual> off) {
    static Candidate of(ShapeParameters shape, Wanted wanted) {
      Measures measures = new RestMeasurer(shape).measure(shape);
      return new Candidate(shape, measures, wanted.residuals(measures));
    }

    /** Sharing out a miss puts more measurements off: only worth it where all end up met. */
    boolean better(Candidate other, boolean sharing) {
      return worst() < other.worst() && (!sharing || met());
    }

    boolean met() {
      return off.stream().allMatch(FitResidual::met);
    }

    FittedEar meshed(MeshLevel level) {
      return new FittedEar(Auricle.of(shape, level), measures, off);
    }

    double worst() {
      return off.stream().mapToDouble(r -> Math.abs(r.share())).max().orElse(0);
    }
  }
}
