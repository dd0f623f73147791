package auricle.anatomy;

/** Smooth steps between 0 and 1. */
final class Steps {
  private Steps() {}

  /** 0 below 0, 1 above 1, continuous curvature between: 6 t^5 − 15 t^4 + 10 t^3. */
  static double rise(double t) {
    double x = Math.min(1, Math.max(0, t));
    return x * x * x * (10 + x * (6 * x - 15));
  }

  /** 1 − rise. */
  static double fall(double t) {
    return 1 - rise(t);
  }
}
