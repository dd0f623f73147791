package auricle.equilibrium;

import auricle.numerics.Linearisation;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;

/**
 * Newton's method for equilibria with λ as one more unknown and one linear condition more, c·δx +
 * c_λ δλ = r, by bordering: δx = −K⁻¹g + δλ v with v = −K⁻¹ ∂g/∂λ (Riks 1979, Int J Solids Struct
 * 15:529-551; Crisfield 1981, Comput Struct 13:55-62). K may be indefinite; stable and unstable
 * points alike are found. The energy is no guide here, so nothing is damped except by the domain of
 * the terms and the largest tilt.
 */
final class BorderedNewton {
  /** The condition, as seen at the present point. */
  interface Condition {
    /** c·d for a change d of the free unknowns. */
    double along(double[] d);

    /** c_λ. */
    double alongLoad();

    /** r: what is still missing at the present state. */
    double missing();
  }

  /** Steps below this fraction of the extent leave nothing to gain but rounding. */
  private static final double STILL = 1e-9;

  private final TotalEnergy energy;
  private final Linearisation point;
  private final NewtonSettings settings;
  private final StepMonitor monitor;
  private final double[] newton;
  private final double[] rate;
  private double tolerance;

  BorderedNewton(
      TotalEnergy energy, Linearisation point, NewtonSettings settings, StepMonitor monitor) {
    this.energy = energy;
    this.point = point;
    this.settings = settings;
    this.monitor = monitor;
    newton = new double[energy.size()];
    rate = new double[energy.size()];
  }

  /** v at the state solved last; shared. */
  double[] rate() {
    return rate;
  }

  /** Solves from x, which is overwritten; λ is that of the energy, moved along. */
  NewtonResult solve(double[] x, Condition condition) {
    List<NewtonIteration> table = new ArrayList<>();
    boolean met = condition.missing() == 0;
    while (true) {
      boolean usable = point.evaluate(x);
      if (usable) {
        point.factorize(true);
        usable = point.usable();
      }
      if (!usable) {
        return result(
            Outcome.DIVERGED, "forces are not finite or the stiffness is singular", table);
      }
      double change = aim(x, condition);
      double length = length(newton);
      boolean still = length <= settings.stepTolerance() * energy.extent();
      boolean end = balanced(x, length) && still && met;
      NewtonIteration line = line(table.size(), end ? 0 : length);
      table.add(line);
      if (end) {
        String kind = point.negativePivots() == 0 ? "stable: " : "unstable: ";
        return result(Outcome.CONVERGED, kind + words(), table);
      }
      if (table.size() > settings.mostIterations() || !Double.isFinite(length + change)) {
        return result(Outcome.STALLED, "the path was lost: " + words(), table);
      }
      if (!monitor.proceed(energy.loadFactor(), line)) {
        return result(Outcome.CANCELLED, "cancelled on request", table);
      }
      double t = Math.min(1, energy.largestStep(x, newton));
      for (int k = 0; k < x.length; k++) {
        x[k] += t * newton[k];
      }
      energy.setLoadFactor(energy.loadFactor() + t * change);
      // the condition is linear: any whole step meets it to rounding
      met |= t == 1;
    }
  }

  private boolean balanced(double[] x, double length) {
    tolerance = point.allowed(settings.residualTolerance());
    if (point.residual() > tolerance && length <= STILL * energy.extent()) {
      tolerance = Math.max(tolerance, point.roundOff(x));
    }
    return point.residual() <= tolerance;
  }

  /** newton := δx; δλ. */
  private double aim(double[] x, Condition condition) {
    energy.loadRate(x, rate);
    point.solve(rate, rate);
    point.solve(point.gradient(), newton);
    for (int k = 0; k < newton.length; k++) {
      rate[k] = -rate[k];
      newton[k] = -newton[k];
    }
    double change =
        (condition.missing() - condition.along(newton))
            / (condition.along(rate) + condition.alongLoad());
    for (int k = 0; k < newton.length; k++) {
      newton[k] += change * rate[k];
    }
    return change;
  }

  private double length(double[] d) {
    double length = 0;
    for (int k = 0; k < d.length; k++) {
      length = Math.max(length, Math.abs(d[k]) * energy.unit(k));
    }
    return length;
  }

  private String words() {
    return point.words(tolerance);
  }

  private NewtonIteration line(int iteration, double length) {
    return new NewtonIteration(
        iteration, point.value(), point.residual(), length, 0, point.negativePivots(), 1, true);
  }

  private NewtonResult result(Outcome outcome, String reason, List<NewtonIteration> table) {
    return new NewtonResult(
        outcome, reason, point.value(), point.residual(), tolerance, point.negativePivots(), table);
  }
}
