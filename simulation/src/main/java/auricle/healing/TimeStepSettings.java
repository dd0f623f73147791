package auricle.healing;

import auricle.equilibrium.StepSettings;
import auricle.numerics.NewtonSettings;

/**
 * How steps in time adapt.
 *
 * @param newton when the equilibrium at the end of a step counts as found
 * @param tolerance_mm largest error of any coordinate that one step may bring in, as estimated from
 *     how far it ends from a straight continuation of the motion, mm
 * @param first_s first step, and first step after anything abrupt, s
 * @param smallest_s steps are not cut below this, s
 * @param growth a step is at most so many times the one before
 * @param momentShare the moment at which something gives way is found to this share of the time
 *     passed
 * @param mostSteps steps, failed ones included, after which the run counts as stalled
 */
public record TimeStepSettings(
    NewtonSettings newton,
    double tolerance_mm,
    double first_s,
    double smallest_s,
    double growth,
    double momentShare,
    int mostSteps) {
  /** 0.05 mm a step, from 4 s on, at most 6 times the step before, moments to 2 %. */
  public static final TimeStepSettings USUAL =
      new TimeStepSettings(
          NewtonSettings.USUAL.withIterations(60).withResidualTolerance(1e-6),
          0.05,
          4,
          1e-3,
          6,
          0.02,
          1000);

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public TimeStepSettings {
    if (!(tolerance_mm > 0
        && smallest_s > 0
        && first_s >= smallest_s
        && growth > 1
        && momentShare > 0
        && mostSteps > 0)) {
      throw new IllegalArgumentException(
          "tolerance %s mm, first step %s s, smallest %s s, growth %s: expected positive numbers, the first step not below the smallest, growth above 1"
              .formatted(tolerance_mm, first_s, smallest_s, growth));
    }
  }

  /** How the body is led to rest where something gave way: by a hundred load steps at most. */
  StepSettings leading() {
    StepSettings usual = StepSettings.USUAL;
    return new StepSettings(
        newton, usual.first(), 1e-3, usual.largest(), usual.easy(), usual.hard(), 100);
  }

  /** The same with another tolerance, mm. */
  public TimeStepSettings withTolerance(double other_mm) {
    return new TimeStepSettings(
        newton, other_mm, first_s, smallest_s, growth, momentShare, mostSteps);
  }

  /** The same with another first and smallest step, s. */
  public TimeStepSettings withFirst(double seconds) {
    return new TimeStepSettings(
        newton,
        tolerance_mm,
        seconds,
        Math.min(smallest_s, seconds),
        growth,
        momentShare,
        mostSteps);
  }
}
