package auricle.equilibrium;

import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;

/** One attempt to come to rest at another λ, and how far from the expected place it led. */
final class StepTrial {
  /** A motion beyond this fraction of the extent that was not expected is a jump. */
  private static final double FAR = 0.02;

  private final NewtonResult result;
  private final double expected;
  private final double surprise;
  private final double extent;

  /** Solves; on failure the caller restores the energy's state. */
  StepTrial(
      TotalEnergy energy,
      NewtonMinimiser minimiser,
      double lambda,
      double[] motion,
      NewtonSettings settings,
      StepMonitor monitor) {
    double[] before = energy.unknowns().clone();
    energy.setLoadFactor(lambda);
    double[] x = predicted(energy, motion);
    double[] aim = energy.unknowns().clone();
    energy.supports().scatter(x, aim);
    result = minimiser.minimise(x, settings, line -> monitor.proceed(lambda, line));
    int coordinates = energy.supports().firstTilt();
    expected = distance(before, aim, coordinates);
    surprise = distance(aim, energy.unknowns(), coordinates);
    extent = energy.extent();
  }

  private static double[] predicted(TotalEnergy energy, double[] motion) {
    double[] still = energy.free();
    double t = Math.min(1, energy.largestStep(still, motion));
    double[] x = still.clone();
    for (int k = 0; k < x.length; k++) {
      x[k] += t * motion[k];
    }
    return Double.isFinite(energy.value(x)) ? x : still;
  }

  private static double distance(double[] a, double[] b, int coordinates) {
    double most = 0;
    for (int i = 0; i < coordinates; i++) {
      most = Math.max(most, Math.abs(a[i] - b[i]));
    }
    return most;
  }

  NewtonResult result() {
    return result;
  }

  boolean converged() {
    return result.converged();
  }

  /** Whether the solution passed through instability and ended away from where it was expected. */
  boolean jumped() {
    return result.metNegativeCurvature() && surprise > Math.max(2 * expected, FAR * extent);
  }

  /** How far from the expected place it ended, mm. */
  double surprise() {
    return surprise;
  }
}
