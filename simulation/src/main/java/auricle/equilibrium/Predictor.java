package auricle.equilibrium;

import auricle.numerics.Linearisation;

/**
 * Where the free unknowns will be at another λ: from the rate dx/dλ = −K⁻¹ ∂g/∂λ at the last state
 * at rest and the change of that rate since the one before (two-step Adams-Bashforth).
 */
final class Predictor {
  /** The change of rate counts for at most this fraction of the rate: beyond, it misleads. */
  private static final double LARGEST_TURN = 0.1;

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
    double turn = turn(step);
    for (int k = 0; k < rate.length; k++) {
      motion[k] = step * (rate[k] + (turn == 0 ? 0 : turn * (rate[k] - earlierRate[k])));
    }
    return motion;
  }

  /** How much of the change of rate to count: half of what the step makes, less if that is much. */
  private double turn(double step) {
    if (earlierRate.length == 0 || lastStep == 0) {
      return 0;
    }
    double[] change = new double[rate.length];
    for (int k = 0; k < rate.length; k++) {
      change[k] = rate[k] - earlierRate[k];
    }
    double full = 0.5 * step / lastStep;
    return full * Math.min(1, LARGEST_TURN * length(rate) / (Math.abs(full) * length(change)));
  }

  private double length(double[] motion) {
    double length = 0;
    for (int k = 0; k < motion.length; k++) {
      length = Math.max(length, Math.abs(motion[k]) * energy.unit(k));
    }
    return length;
  }
}
