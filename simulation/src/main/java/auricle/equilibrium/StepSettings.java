package auricle.equilibrium;

import auricle.numerics.NewtonSettings;

/**
 * How load steps adapt. Step sizes are changes of λ, positive.
 *
 * @param newton when a single solution ends
 * @param first first step tried; infinite: as far as the first requested λ
 * @param smallest steps are not cut below this
 * @param largest steps do not grow beyond this
 * @param easy a step solved in at most this many iterations lets the next grow
 * @param hard a step that takes more iterations than this makes the next shorter
 * @param mostSteps steps, failed ones included, after which the run counts as stalled
 */
public record StepSettings(
    NewtonSettings newton,
    double first,
    double smallest,
    double largest,
    int easy,
    int hard,
    int mostSteps) {
  /**
   * From requested value to requested value in one step where that works in 60 iterations, else
   * down to steps of 1e-4.
   */
  public static final StepSettings USUAL =
      new StepSettings(
          NewtonSettings.USUAL.withIterations(60),
          Double.POSITIVE_INFINITY,
          1e-4,
          Double.POSITIVE_INFINITY,
          8,
          25,
          2000);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public StepSettings {
    if (!(smallest > 0 && first >= smallest && largest >= smallest && mostSteps > 0)) {
      throw new IllegalArgumentException(
          "first step %s, smallest %s, largest %s; expected 0 < smallest ≤ the others"
              .formatted(first, smallest, largest));
    }
  }

  /** The same with other settings of the single solution. */
  public StepSettings withNewton(NewtonSettings other) {
    return new StepSettings(other, first, smallest, largest, easy, hard, mostSteps);
  }

  /** The same with another first and largest step. */
  public StepSettings withSteps(double firstStep, double largestStep) {
    return new StepSettings(newton, firstStep, smallest, largestStep, easy, hard, mostSteps);
  }
}
