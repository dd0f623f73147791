package auricle.numerics;

/**
 * Moves the iterate: relaxed steps on trial, the way back to the checkpoint, the way off a saddle.
 */
final class NewtonStep {
  private static final int MOST_STIFFENINGS = 5;

  /**
   * Leaps along the weakest mode of a saddle, as fractions of the extent, one after the other,
   * where no small motion along it lowers the value by more than rounding.
   */
  private static final double[] LEAPS = {1e-2, -1e-2, 5e-2, -5e-2};

  /** As long as a step with an old factor takes the residual down to this share. */
  private static final double QUICK = 0.1;

  private final Linearisation point;
  private final SmoothFunction function;
  private final double[] x;
  private final int mostRelaxed;
  private final double factorReach;
  private final Descent descent;
  private final Point best;
  private final double[] direction;
  private final double[] bestDirection;

  /** Longest step that is trusted at present. */
  private double reach;

  /** How far the point is from the one whose factor there is. */
  private double drift;

  private int relaxed;
  private int leaps;

  /** Whether the steps since the checkpoint began with a leap. */
  private boolean leaping;

  /** Whether steps are taken with K as it is, indefinite or not. */
  private boolean bold = true;

  /** Whether nothing has been tried yet from the checkpoint. */
  private boolean fresh;

  /** The first step from the checkpoint, by which others are judged. */
  private Descent.Attempt first = Descent.Attempt.NONE;

  private double length;
  private final double[] start;

  NewtonStep(Linearisation point, double[] x, NewtonSettings settings) {
    this.point = point;
    this.function = point.function();
    this.x = x;
    start = x.clone();
    mostRelaxed = Math.max(1, settings.relaxedSteps());
    factorReach = settings.factorReach();
    descent = new Descent(function);
    best = new Point(x.length);
    direction = new double[x.length];
    bestDirection = new double[x.length];
    reach = function.extent();
  }

  /** Makes the evaluated point the checkpoint. */
  void checkpoint() {
    best.keep(function, x, point.value(), point.residual());
    relaxed = 0;
    fresh = true;
    leaping = false;
  }

  /** Whether the next step wants K as it is. */
  boolean bold() {
    return bold;
  }

  boolean atCheckpoint() {
    return relaxed == 0;
  }

  /** Whether the evaluated point is no higher than the checkpoint, rounding aside. */
  boolean notAbove() {
    return relaxed == 0 || point.value() <= best.value() + function.valueRoundOff();
  }

  Point best() {
    return best;
  }

  /** Length of the last step tried. */
  double length() {
    return length;
  }

  /** Net distance from the start: max |x_i − start_i| unit_i, tilts since reset left out. */
  double travelled() {
    Dense.along(x, -1, start, direction);
    return Balance.length(function, direction);
  }

  /**
   * Goes on from the factorised point.
   *
   * @param newton K⁻¹ g
   * @return whether there was a way on
   */
  boolean forward(double[] newton) {
    // once bold steps have failed, none until the curvature is positive again
    bold |= fresh && point.negativePivots() == 0;
    fresh = false;
    return (relaxed < mostRelaxed && relaxedStep(newton)) || retreat();
  }

  private boolean relaxedStep(double[] newton) {
    boolean fromBest = relaxed == 0;
    if (fromBest) {
      first = Descent.Attempt.NONE;
    }
    boolean downhill = point.usable() && aim(newton);
    if (!downhill && !(bold && Dense.finite(direction))) {
      return false;
    }
    double t = fraction();
    if (fromBest) {
      System.arraycopy(direction, 0, bestDirection, 0, x.length);
      double slope = Dense.dot(direction, point.gradient());
      first = downhill ? new Descent.Attempt(slope, t, Double.POSITIVE_INFINITY) : first;
    }
    length = t * Balance.length(function, direction);
    Dense.along(x, t, direction, x);
    boolean finite = t > 0 && evaluate();
    if (fromBest && finite) {
      first = first.withValue(point.value());
    }
    if (finite) {
      settle();
    }
    return finite;
  }

  /**
   * Forces foreseen from an unstable point mean little: after it, those that are there count, which
   * a second evaluation of the same point brings.
   */
  private boolean evaluateAfter(boolean unstable) {
    return evaluateAnew() && (!unstable || point.evaluate(x));
  }

  /** With the old factor where it serves, else with one to be made. */
  private boolean evaluate() {
    double before = point.residual();
    drift += length;
    if (function.exact()
        && drift <= factorReach * function.extent()
        && point.evaluateNearby(x)
        && point.kept()
        && point.residual() <= QUICK * before) {
      return true;
    }
    return evaluateAfter(point.negativePivots() != 0);
  }

  private boolean evaluateAnew() {
    drift = 0;
    return point.evaluate(x);
  }

  /** Keeps the new point as checkpoint if it is low enough. */
  private void settle() {
    double noise = function.valueRoundOff();
    boolean level = Math.abs(point.value() - best.value()) <= noise;
    if (Descent.enough(best.value(), first.slope(), first.fraction(), point.value())
        || (level && point.residual() < best.residual())) {
      reach = Math.max(reach, (relaxed == 0 ? 4 : 2) * length);
      checkpoint();
    } else {
      relaxed++;
    }
  }

  /** direction = −newton; whether it is finite and leads downhill. */
  private boolean aim(double[] newton) {
    for (int i = 0; i < x.length; i++) {
      direction[i] = -newton[i];
    }
    return Dense.finite(direction) && Dense.dot(direction, point.gradient()) < 0;
  }

  private double fraction() {
    double trusted = reach / Balance.length(function, direction);
    return Math.min(1, Math.min(trusted, function.largestStep(x, direction)));
  }

  /**
   * Back to the checkpoint, and from there down: cautiously first, then by a shorter or a stiffer
   * step.
   */
  boolean retreat() {
    best.recall(function, x);
    relaxed = 0;
    if (bold || leaping) {
      bold = false;
      leaping = false;
      length = 0;
      return evaluateAnew();
    }
    double t = first.fraction() > 0 ? descent.shortened(best, bestDirection, first) : 0;
    for (int k = 0; t == 0 && k < MOST_STIFFENINGS; k++) {
      t = stiffer(k + 1);
    }
    if (t == 0) {
      return false;
    }
    length = t * Balance.length(function, bestDirection);
    reach = 2 * length;
    return land(t, bestDirection);
  }

  private double stiffer(int times) {
    evaluateAnew();
    point.factorize(false);
    for (int k = 0; k < times; k++) {
      point.factor().stiffen();
    }
    if (!point.usable()) {
      return 0;
    }
    point.solve(point.gradient(), bestDirection);
    if (!aim(bestDirection)) {
      return 0;
    }
    System.arraycopy(direction, 0, bestDirection, 0, x.length);
    double slope = Dense.dot(direction, point.gradient());
    return descent.fraction(best, bestDirection, slope, fraction());
  }

  /** Off a stationary checkpoint along its weakest mode. */
  boolean escape() {
    double[] mode = new WeakestMode(point.factor()).vector();
    double extent = function.extent();
    Dense.scale(1 / Balance.length(function, mode), mode);
    if (Dense.dot(mode, point.gradient()) > 0) {
      Dense.scale(-1, mode);
    }
    checkpoint();
    double t = 0;
    for (int sign = 0; t == 0 && sign < 2; sign++) {
      double most = Math.min(extent, function.largestStep(x, mode));
      t = descent.escape(best, mode, 1e-3 * extent, most);
      if (t == 0) {
        Dense.scale(-1, mode);
      }
    }
    length = t;
    reach = Math.max(reach, t);
    return t > 0 ? land(t, mode) : leap(mode);
  }

  /**
   * Farther along a mode, whatever the value there: in a thin shell it rises along a straight line
   * and falls along the curve beside it. Relaxed steps downhill follow; if they do not come below
   * the saddle, the iteration returns there and the next leap is tried.
   */
  private boolean leap(double[] mode) {
    if (leaps == LEAPS.length) {
      return false;
    }
    double far = LEAPS[leaps++] * function.extent();
    Dense.scale(Math.signum(far), mode);
    length = Math.min(Math.abs(far), function.largestStep(x, mode));
    reach = Math.max(reach, 2 * length);
    Dense.along(best.x(), length, mode, x);
    bold = false;
    fresh = false;
    leaping = true;
    first = Descent.Attempt.NONE;
    relaxed = 1;
    return evaluateAnew();
  }

  private boolean land(double t, double[] along) {
    Dense.along(best.x(), t, along, x);
    boolean finite = evaluateAnew();
    if (finite) {
      checkpoint();
    }
    return finite;
  }
}
