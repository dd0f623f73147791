package auricle.surgery;

import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;

/**
 * How changes are led to rest.
 *
 * @param settings of the load steps
 * @param monitor told of every iteration, may cancel
 */
public record Solving(StepSettings settings, StepMonitor monitor) {
  private static final int MOST_STEPS = 120;

  /** The usual settings, given up after a hundred load steps. */
  public static Solving watched(StepMonitor monitor) {
    StepSettings usual = StepSettings.USUAL;
    return new Solving(
        new StepSettings(
            usual.newton(),
            usual.first(),
            1e-3,
            usual.largest(),
            usual.easy(),
            usual.hard(),
            MOST_STEPS),
        monitor);
  }
}
