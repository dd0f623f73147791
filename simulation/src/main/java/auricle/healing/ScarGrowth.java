package auricle.healing;

/**
 * How scar and the grip of re-adhered skin come with time: share of the final stiffness α(t) = 1 −
 * exp(−(t/τ)²). Slow in the first days, two thirds after τ, all of it after three times τ: the
 * shape of published curves of the strength of wounds; τ is a row of the tables.
 *
 * @param adhering_days τ, days, above 0
 */
public record ScarGrowth(double adhering_days) {
  /**
   * @throws IllegalArgumentException if the time is not positive and finite
   */
  public ScarGrowth {
    if (!(adhering_days > 0) || Double.isInfinite(adhering_days)) {
      throw new IllegalArgumentException("adhering over " + adhering_days + " days");
    }
  }

  /** τ, s. */
  double scale_s() {
    return adhering_days * Durations.DAY_S;
  }

  /** α at a time, s. */
  public double share(double time_s) {
    double x = time_s / scale_s();
    return -Math.expm1(-x * x);
  }

  /** dα/dt, a second. */
  double rate(double time_s) {
    double x = time_s / scale_s();
    return 2 * x / scale_s() * Math.exp(-x * x);
  }
}
