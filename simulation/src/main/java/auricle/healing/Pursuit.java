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
 * Minima close by, followed one after the other with few factorised Hessians and what the steps
 * tell about their change ({@link SecantPairs}). A factor serves for two minima at most; where the
 * iteration does not close in with it, one is made where the iteration stands.
 *
 * <p>What counts as rest is what Newton's method asks for: a residual and a step below their
 * tolerances. That it is a minimum is known from the pivots of the factor, which was made no
 * farther than {@value #REACH} of the extent from it.
 */
final class Pursuit {
  private static final double REACH = 0.01;

  /** Share to which every step has to take the residual, with an old factor and with a new one. */
  private static final double WITH_OLD = 0.5;

  private static final double WITH_NEW = 0.7;
  private static final int MOST = 15;
  private static final int MOST_FACTORS = 4;

  private final TotalEnergy energy;
  private final Linearisation point;
  private final double most;
  private final List<NewtonIteration> table = new ArrayList<>();
  private SecantPairs curvature;
  private double[] gradient = new double[0];
  private double value;
  private double residual;
  private double length;

  /** Where the factor was made, and how many minima it has served for; without length: none. */
  private double[] place = new double[0];

  private int served;
  private int factors;
  private int factorsTold;

  Pursuit(TotalEnergy energy, Linearisation point) {
    this.energy = energy;
    this.point = point;
    most = REACH * energy.extent();
    curvature = new SecantPairs(point::solve);
  }

  /** One line an evaluation of the forces, of the last run. */
  List<NewtonIteration> table() {
    return List.copyOf(table);
  }

  /** To be called when the energy or its factor has been changed by others. */
  void forget() {
    place = new double[0];
  }

  /**
   * Follows it.
   *
   * @param x start; overwritten
   * @return at rest or cancelled; null where it is not close by, all left as it happens to be
   */
  @Nullable NewtonResult run(double[] x, NewtonSettings settings, NewtonMonitor monitor) {
    table.clear();
    factors = 0;
    factorsTold = 0;
    energy.begin(x);
    boolean on = goOn(x) || factorise(x);
    while (on && table.size() < MOST) {
      double[] step = step();
      length = largest(step, 1);
      if (!told(monitor)) {
        return result(Outcome.CANCELLED, "cancelled on request", settings);
      }
      double before = residual;
      boolean near = length <= most && energy.largestStep(x, step) >= 1;
      if (near) {
        advance(x, step);
        if (atRest(settings)) {
          energy.begin(x);
          return result(Outcome.CONVERGED, words(settings), settings);
        }
      }
      on = near && closesIn(x, before) || anew(x, near);
    }
    forget();
    return null;
  }

  /** With the factor that there is, if it may serve once more. */
  private boolean goOn(double[] x) {
    boolean mayServe = served == 1 && away(x) <= most;
    served++;
    if (!mayServe || !point.evaluateNearby(x) || !point.kept()) {
      return false;
    }
    take();
    return true;
  }

  private boolean closesIn(double[] x, double before) {
    return residual <= (factors == 0 ? WITH_OLD : WITH_NEW) * before && away(x) <= most;
  }

  /** With a new factor; not where even that of this place leads too far. */
  private boolean anew(double[] x, boolean near) {
    return (near || factors == 0) && factors < MOST_FACTORS && factorise(x);
  }

  /** Whether the Hessian at x is positive definite. */
  private boolean factorise(double[] x) {
    factors++;
    served = 1;
    place = x.clone();
    curvature = new SecantPairs(point::solve);
    if (!point.evaluate(x)) {
      return false;
    }
    point.factorize(true);
    take();
    return point.usable() && point.negativePivots() == 0;
  }

  private void take() {
    gradient = point.gradient().clone();
    value = point.value();
    residual = largest(gradient, -1);
  }

  /** How far the coordinates at x are from where the factor was made, mm. */
  private double away(double[] x) {
    double farthest = place.length == 0 ? Double.POSITIVE_INFINITY : 0;
    for (int k = 0; k < place.length; k++) {
      if (energy.supports().unknown(k) < energy.supports().firstTilt()) {
        farthest = Math.max(farthest, Math.abs(x[k] - place[k]));
      }
    }
    return farthest;
  }

  private double[] step() {
    double[] step = curvature.times(gradient);
    for (int i = 0; i < step.length; i++) {
      step[i] = -step[i];
    }
    return step;
  }

  private boolean told(NewtonMonitor monitor) {
    NewtonIteration line =
        new NewtonIteration(
            table.size(), value, residual, length, 0, 0, factors - factorsTold, table.isEmpty());
    factorsTold = factors;
    table.add(line);
    return monitor.proceed(line);
  }

  private void advance(double[] x, double[] step) {
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
    gradient = next;
  }

  private boolean atRest(NewtonSettings settings) {
    return residual <= tolerance(settings) && length <= settings.stepTolerance() * energy.extent();
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

  private String words(NewtonSettings settings) {
    return "at rest: largest residual %.3g, tolerance %.3g"
        .formatted(residual, tolerance(settings));
  }

  private double tolerance(NewtonSettings settings) {
    return settings.residualTolerance() * energy.forceScale();
  }

  private NewtonResult result(Outcome outcome, String reason, NewtonSettings settings) {
    return new NewtonResult(outcome, reason, value, residual, tolerance(settings), 0, table());
  }
}
