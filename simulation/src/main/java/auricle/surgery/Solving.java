package auricle.surgery;

import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;

/**
 * How changes are led to rest.
 *
 * @param settings of the load steps
 * @param monitor told of every iteration, may cancel
 * @param foreseen called when the body stands where it is foreseen to rest, before it does; may
 *     read its state, and may not be called at all
 */
public record Solving(StepSettings settings, StepMonitor monitor, Runnable foreseen) {
  private static final int MOST_STEPS = 120;

  /**
   * An ear is thick: its triangles are two to three thicknesses wide, so that stretching them is
   * tens of times stiffer than bending, no more.
   */
  private static final double FACTOR_REACH = 5e-4;

  /** The usual settings, given up after a hundred load steps. */
  public static Solving watched(StepMonitor monitor) {
    StepSettings usual = StepSettings.USUAL;
    return new Solving(
        new StepSettings(
            usual.newton().withFactorReach(FACTOR_REACH),
            usual.first(),
            1e-3,
            usual.largest(),
            usual.easy(),
            usual.hard(),
            MOST_STEPS),
        monitor,
        () -> {});
  }

  /** The same, and something is done where the rest is foreseen. */
  public Solving telling(Runnable whereForeseen) {
    return new Solving(settings, monitor, whereForeseen);
  }

  /** The same without telling what is foreseen: the rest that is led to is not the last. */
  Solving quiet() {
    return telling(() -> {});
  }

  /** The same for places on the way alone. */
  Solving passing() {
    StepSettings passing = settings.withNewton(settings.newton().forPassing());
    return new Solving(passing, monitor, () -> {});
  }
}
