package auricle.equilibrium;

import auricle.numerics.NewtonSettings;

/**
 * How a path is followed. Arc steps are the largest motion of a vertex coordinate expected, as
 * fractions of the extent.
 *
 * @param newton tolerances; a correction that takes more iterations than its limit cuts the step
 * @param first first arc step
 * @param smallest arc steps are not cut below this
 * @param largest arc steps do not grow beyond this
 * @param mostSteps steps, failed ones included, after which the path counts as stalled
 */
public record PathSettings(
    NewtonSettings newton, double first, double smallest, double largest, int mostSteps) {
  /** Arc steps from a hundredth of the extent, between 1e-6 and a tenth of it. */
  public static final PathSettings USUAL =
      new PathSettings(
          NewtonSettings.USUAL.acceptingUnstable(true).withIterations(20), 0.01, 1e-6, 0.1, 2000);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public PathSettings {
    if (!(smallest > 0 && first >= smallest && largest >= first && mostSteps > 0)) {
      throw new IllegalArgumentException(
          "arc steps %s, %s, %s; expected 0 < smallest ≤ first ≤ largest"
              .formatted(smallest, first, largest));
    }
  }

  /** The same with other arc steps. */
  public PathSettings withSteps(double firstStep, double largestStep) {
    return new PathSettings(newton, firstStep, smallest, largestStep, mostSteps);
  }
}
