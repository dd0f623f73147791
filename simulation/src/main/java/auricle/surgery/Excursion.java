package auricle.surgery;

import auricle.equilibrium.TotalEnergy;

/** How far a body was expected to go, and how far from there it went. */
final class Excursion {
  private final double[] aim;
  private final double expected;

  /** Farther from the aim than this many times its distance is a snap, as for load steps. */
  private static final double SNAP = 2;

  /**
   * @param x free unknowns to begin with; led to where the motion goes, as far as it is allowed
   */
  Excursion(TotalEnergy energy, double[] x, double[] motion) {
    double[] before = energy.unknowns().clone();
    double t = Math.min(1, energy.largestStep(x, motion));
    for (int k = 0; k < x.length; k++) {
      x[k] += t * motion[k];
    }
    aim = before.clone();
    energy.supports().scatter(x, aim);
    expected = distance(energy, before);
  }

  /** Whether the body is now about where it was expected. */
  boolean asExpected(TotalEnergy energy) {
    return distance(energy, energy.unknowns()) <= SNAP * expected;
  }

  /** Largest change of a coordinate from the aim, mm. */
  private double distance(TotalEnergy energy, double[] u) {
    double most = 0;
    for (int i = 0; i < energy.supports().firstTilt(); i++) {
      most = Math.max(most, Math.abs(u[i] - aim[i]));
    }
    return most;
  }
}
