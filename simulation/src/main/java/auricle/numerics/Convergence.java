package auricle.numerics;

/** Decides whether a factorised point is a solution. */
final class Convergence {
  /** What a point is. */
  enum Verdict {
    /** Forces do not balance yet, or the point is too inexact. */
    GO_ON,
    /** A solution. */
    SOLVED,
    /** Forces balance, but there is negative curvature to follow. */
    SADDLE,
    /** Forces balance, but nothing holds some motion. */
    MECHANISM
  }

  /** Below this the weakest mode cannot be told from rounding of the Hessian. */
  private static final double SINGULAR = 1e-14;

  /** A body whose weakest mode is found to be stiffer than this is held, whatever it is exactly. */
  private static final double HELD = 1e-9;

  /** Steps below this fraction of the extent: nothing left to gain but rounding. */
  private static final double STILL = 1e-9;

  /** With an old factor the next step is not a square of this one: this share of it is asked. */
  private static final double ROUGH = 1e-3;

  /**
   * A place on the way where curvature is negative is a saddle only where forces balance to this
   * share of what is asked there: elsewhere they show the way down, and the weakest mode does not.
   */
  private static final double BALANCED = 1e-3;

  private final Linearisation point;
  private final NewtonSettings settings;
  private final double[] step;
  private double tolerance;
  private String words = "";

  Convergence(Linearisation point, NewtonSettings settings) {
    this.point = point;
    this.settings = settings;
    step = new double[point.function().size()];
  }

  /** The residual asked for at the point last judged. */
  double tolerance() {
    return tolerance;
  }

  /** K⁻¹ g (or with the shifted K) at the point last judged, if its factor was usable. */
  double[] step() {
    return step;
  }

  /** What is wrong with a mechanism. */
  String words() {
    return words;
  }

  Verdict judge(double[] x) {
    tolerance = point.allowed(settings.residualTolerance());
    if (!point.usable()) {
      return Verdict.GO_ON;
    }
    double length = newtonStep();
    double extent = point.function().extent();
    if (point.residual() > tolerance && length <= STILL * extent) {
      tolerance = Math.max(tolerance, point.roundOff(x));
    }
    if (!(point.residual() <= tolerance)) {
      return Verdict.GO_ON;
    }
    if (!point.function().exact() && !settings.passing()) {
      return Verdict.GO_ON;
    }
    if (settings.passing()
        && point.negativePivots() != 0
        && point.residual() > BALANCED * tolerance) {
      return Verdict.GO_ON;
    }
    Verdict verdict = curvature();
    double share = point.rough() ? ROUGH : 1;
    boolean exact = length <= share * settings.stepTolerance() * extent;
    return verdict == Verdict.SOLVED && !exact ? Verdict.GO_ON : verdict;
  }

  private double newtonStep() {
    point.solve(point.gradient(), step);
    return Balance.length(point.function(), step);
  }

  private Verdict curvature() {
    if (step.length == 0) {
      return Verdict.SOLVED;
    }
    if (point.negativePivots() != 0 && point.factor().shift() == 0 && !settings.acceptUnstable()) {
      point.factorize(false);
    }
    boolean positive = point.negativePivots() == 0;
    WeakestMode mode = new WeakestMode(point.factor(), positive ? HELD : Double.POSITIVE_INFINITY);
    double lowest = mode.eigenvalue();
    if (!(Math.abs(lowest) > SINGULAR)) {
      String where = point.function().describe(mode.leader(point.factor()));
      words =
          "nothing holds a motion that moves %s most (stiffness %.1e of that of a single unknown): supports are missing, or this is exactly a critical point"
              .formatted(where, lowest);
      return Verdict.MECHANISM;
    }
    if (positive || settings.acceptUnstable()) {
      return Verdict.SOLVED;
    }
    return Verdict.SADDLE;
  }
}
