package auricle.energy;

/**
 * Contact pressure over the gap g between two surfaces: none from the activation gap ĝ on, rising
 * without bound as the gap closes.
 *
 * <pre>
 *   energy per area w(g) = c ĝ b(g/ĝ),   b(s) = −(1 − s)² ln s for 0 &lt; s &lt; 1, 0 beyond
 *   pressure −w'(g) = −c b'(g/ĝ),        c = p½ / (½ + ln 2)
 * </pre>
 *
 * <p>b is the clamped logarithmic barrier b(d, d̂) of Li, Ferguson et al. 2020, ACM Trans. Graph.
 * 39(4) 49, taken over the gap itself rather than its square; it is twice continuously
 * differentiable. The scale c is set so that the pressure at half the activation gap is p½. At a
 * pressure p small against p½ the gap stays near ĝ; at 10 p½ it is about ĝ/10: the two numbers say
 * how thick the cushion is that stands for touching skin.
 *
 * @param activation_mm ĝ, &gt; 0
 * @param pressureAtHalf_mpa p½, &gt; 0
 */
public record BarrierLaw(double activation_mm, double pressureAtHalf_mpa) {
  private static final double SLOPE_AT_HALF = 0.5 + Math.log(2);

  /**
   * @throws IllegalArgumentException if one of the two is not positive and finite
   */
  public BarrierLaw {
    if (!(activation_mm > 0 && pressureAtHalf_mpa > 0)
        || Double.isInfinite(activation_mm)
        || Double.isInfinite(pressureAtHalf_mpa)) {
      throw new IllegalArgumentException(
          "activation gap %s mm and pressure %s MPa must be positive and finite"
              .formatted(activation_mm, pressureAtHalf_mpa));
    }
  }

  private double scale() {
    return pressureAtHalf_mpa / SLOPE_AT_HALF;
  }

  /** Energy per area, mJ/mm²; infinite where the gap is not positive. */
  public double energy(double gap_mm) {
    double s = gap_mm / activation_mm;
    if (s >= 1) {
      return 0;
    }
    return s > 0
        ? -scale() * activation_mm * (1 - s) * (1 - s) * Math.log(s)
        : Double.POSITIVE_INFINITY;
  }

  /** Pressure −dw/dg, MPa, not negative; NaN where the gap is not positive. */
  public double pressure(double gap_mm) {
    double s = gap_mm / activation_mm;
    if (s >= 1) {
      return 0;
    }
    return s > 0 ? scale() * (1 - s) * ((1 - s) / s - 2 * Math.log(s)) : Double.NaN;
  }

  /** Stiffness d²w/dg², MPa/mm, not negative; NaN where the gap is not positive. */
  public double stiffness(double gap_mm) {
    double s = gap_mm / activation_mm;
    if (s >= 1) {
      return 0;
    }
    double curvature = -2 * Math.log(s) + (1 - s) * (3 * s + 1) / (s * s);
    return s > 0 ? scale() / activation_mm * curvature : Double.NaN;
  }
}
