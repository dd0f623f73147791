package auricle.healing;

import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;
import auricle.numerics.NewtonIteration;
import auricle.numerics.NewtonMonitor;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A minimum close by, followed with one factorised Hessian and what the steps tell about its change
 * ({@link SecantPairs}).
 *
 * <p>What counts as rest is what Newton's method asks for: a residual and a step below their
 * tolerances. That it is a minimum is known from the pivots at the start, which is no farther than
 * {@value #REACH} of the extent from it.
 */
final class Pursuit {
  private static final double REACH = 0.01;
  private static final double CLOSING_IN = 0.7;
  private static final int MOST = 15;

  private final TotalEnergy energy;
  private final Linearisation point;
  private final NewtonSettings settings;
  private final NewtonMonitor monitor;
  private final SecantPairs curvature;
  private final List<NewtonIteration> table = new ArrayList<>();
  private double value;
  private double residual;
  private double length;

  Pursuit(TotalEnergy energy, Linearisation point, NewtonSettings settings, NewtonMonitor monitor) {
    this.energy = energy;
    this.point = point;
    this.settings = settings;
    this.monitor = monitor;
    curvature = new SecantPairs(point::solve);
  }

  /** One line an evaluation of the forces. */
  List<NewtonIteration> table() {
    return table;
  }

  /**
   * Follows it.
   *
   * @param x start; overwritten
   * @return at rest or cancelled; null where it is not close by, all left as it happens to be
   */
  @Nullable NewtonResult run(double[] x) {
    energy.begin(x);
    if (!point.evaluate(x)) {
      return null;
    }
    point.factorize(true);
    boolean stable = point.usable() && point.negativePivots() == 0;
    double[] gradient = point.gradient().clone();
    value = point.value();
    residual = largest(gradient, -1);
    double most = REACH * energy.extent();
    while (stable && table.size() < MOST) {
      double[] step = step(gradient);
      length = largest(step, 1);
      if (!told()) {
        return result(Outcome.CANCELLED, "cancelled on request");
      }
      double before = residual;
      boolean near = length <= most && energy.largestStep(x, step) >= 1;
      gradient = near ? advance(x, step, gradient) : gradient;
      if (atRest()) {
        energy.begin(x);
        return result(Outcome.CONVERGED, words());
      }
      stable = near && residual <= CLOSING_IN * before;
    }
    return null;
  }

  private double[] step(double[] gradient) {
    double[] step = curvature.times(gradient);
    for (int i = 0; i < step.length; i++) {
      step[i] = -step[i];
    }
    return step;
  }

  private boolean told() {
    int factorisations = table.isEmpty() ? 1 : 0;
    NewtonIteration line =
        new NewtonIteration(
            table.size(), value, residual, length, 0, 0, factorisations, table.isEmpty());
    table.add(line);
    return monitor.proceed(line);
  }

  private double[] advance(double[] x, double[] step, double[] gradient) {
    for (int i = 0; i < x.length; i++) {
      x[i] += step[i];
    }
    double[] next = new double[x.length];
    value = energy.gradient(x, next);
    residual = largest(next, -1);
    double[] change = next.clone();
    for (int i = 0; i < change.length; i++) {
      change[i] -= gradient[i];
    }
    curvature.learn(step, change);
    return next;
  }

  private boolean atRest() {
    return residual <= tolerance() && length <= settings.stepTolerance() * energy.extent();
  }

  /** max |v_i| unit_i^power; not a number if one of them is none. */
  private double largest(double[] v, int power) {
    double largest = 0;
    for (int i = 0; i < v.length; i++) {
      double unit = energy.unit(i);
      double size = Math.abs(v[i]) * (power > 0 ? unit : 1 / unit);
      if (!(size <= largest)) {
        largest = size;
      }
    }
    return largest;
  }

  private String words() {
    return "at rest: largest residual %.3g, tolerance %.3g".formatted(residual, tolerance());
  }

  private double tolerance() {
    return settings.residualTolerance() * energy.forceScale();
  }

  private NewtonResult result(Outcome outcome, String reason) {
    return new NewtonResult(outcome, reason, value, residual, tolerance(), 0, table);
  }
}
