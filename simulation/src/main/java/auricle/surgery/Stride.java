package auricle.surgery;

import auricle.equilibrium.TotalEnergy;

/**
 * How much of a change may be made at once. What is foreseen of a motion is a straight line; where
 * the sheet turns by θ on its way, that stretches it by θ²/2, and stretching is stiff: the start is
 * far from any equilibrium then, and mostly unstable.
 */
final class Stride {
  /** A director tilts by no more than that within a stride, rad: 4 % of stretch. */
  private static final double LARGEST_TILT = 0.3;

  /** The same where that is the whole way. */
  private static final double LARGEST_AT_ONCE = 0.45;

  /** What is next to it by less than this share is gone at once. */
  private static final double SLIVER = 1.1;

  /** A motion that tilts no director by more than that, rad, hardly changes the stiffness. */
  private static final double GENTLE = 0.15;

  private Stride() {}

  /** Share of a motion of the free unknowns that may be gone at once, 0 … 1. */
  static double share(TotalEnergy energy, double[] motion) {
    double tilt = tilt(energy, motion);
    return tilt > LARGEST_AT_ONCE ? LARGEST_TILT / tilt : 1;
  }

  /** Whether a motion of the free unknowns is so small that the stiffness stays about the same. */
  static boolean gentle(TotalEnergy energy, double[] motion) {
    double tilt = tilt(energy, motion);
    return tilt > 0 && tilt < GENTLE;
  }

  private static double tilt(TotalEnergy energy, double[] motion) {
    double tilt = 0;
    int first = energy.supports().firstTilt();
    for (int k = 0; k < motion.length; k++) {
      if (energy.supports().unknown(k) >= first) {
        tilt = Math.max(tilt, Math.abs(motion[k]));
      }
    }
    return tilt;
  }

  /** Where to go next: two even steps rather than a long one and a sliver. */
  static double next(double done, double step) {
    double left = 1 - done;
    if (left <= SLIVER * step) {
      return 1;
    }
    return done + (left < 2 * step ? left / 2 : step);
  }
}
