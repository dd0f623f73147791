package auricle.equilibrium;

import auricle.numerics.Linearisation;

/**
 * Where the free unknowns will be at another λ: from the rate dx/dλ = −K⁻¹ ∂g/∂λ at the last state
 * at rest and the change of that rate since the one before (two-step Adams-Bashforth).
 */
final class Predictor {
  private final TotalEnergy energy;
  private double[] rate = new double[0];
  private double[] earlierRate = new double[0];
  private double lastStep;

  Predictor(TotalEnergy energy) {
    this.energy = energy;
  }

  /** Takes the rate at a converged, factorised state reached by the given step of λ. */
  void learn(Linearisation point, double step) {
    earlierRate = rate;
    lastStep = step;
    rate = new double[energy.size()];
    energy.loadRate(energy.free(), rate);
    point.solve(rate, rate);
    for (int k = 0; k < rate.length; k++) {
      rate[k] = -rate[k];
    }
  }

  /** Forgets: what comes next does not continue what was before. */
  void forget() {
    rate = new double[0];
    earlierRate = new double[0];
  }

  /** The motion over a step of λ, zero if nothing is known. */
  double[] motion(double step) {
    double[] motion = new double[energy.size()];
    for (int k = 0; k < rate.length; k++) {
      double change = k < earlierRate.length ? (rate[k] - earlierRate[k]) / lastStep : 0;
      motion[k] = step * (rate[k] + 0.5 * step * change);
    }
    return motion;
  }
}
