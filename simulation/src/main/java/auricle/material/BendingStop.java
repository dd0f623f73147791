package auricle.material;

/**
 * Something that a section has against bending across its first axis, one-sidedly: beyond a
 * curvature κ₀ towards one side it adds, a unit of area,
 *
 * <pre> W = ½ k ⟨s κ − κ₀⟩²,   κ = K₂ + (D₁₂/D₂₂) K₁ </pre>
 *
 * <p>κ is M₂/D₂₂, so that a stop takes back what {@link Section#softenedAcross} took. So that W″ is
 * continuous, it rises linearly from 0 to k over a band of {@value #BLEND} of κ₀, and at least
 * {@value #LEAST_BLEND} 1/mm, on each side of it; outside of it the law is exact.
 *
 * @param side s: 1 where the sheet stops as it becomes more convex to its normal, −1 towards the
 *     other side
 * @param curvature_per_mm κ₀, 1/mm, not negative
 * @param stiffness_n_mm k, N·mm, positive
 */
public record BendingStop(int side, double curvature_per_mm, double stiffness_n_mm) {
  private static final double BLEND = 0.05;
  private static final double LEAST_BLEND = 5e-4;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public BendingStop {
    if (Math.abs(side) != 1 || !(curvature_per_mm >= 0) || !(stiffness_n_mm > 0)) {
      throw new IllegalArgumentException(
          "a stop to side %d at %s 1/mm of %s N·mm; expected side 1 or -1, a curvature ≥ 0, a stiffness > 0"
              .formatted(side, curvature_per_mm, stiffness_n_mm));
    }
  }

  private double blend() {
    return Math.max(BLEND * curvature_per_mm, LEAST_BLEND);
  }

  private double beyond(double curvature) {
    return side * curvature - curvature_per_mm;
  }

  /** W, mJ/mm². */
  public double energy(double curvature) {
    double x = beyond(curvature);
    double w = blend();
    double in = Math.max(x + w, 0);
    return stiffness_n_mm * (x > w ? x * x / 2 + w * w / 6 : in * in * in / (12 * w));
  }

  /** dW/dκ, N. */
  public double moment(double curvature) {
    double x = beyond(curvature);
    double w = blend();
    double in = Math.max(x + w, 0);
    return side * stiffness_n_mm * (x > w ? x : in * in / (4 * w));
  }

  /** d²W/dκ², N·mm. */
  public double stiffness(double curvature) {
    double w = blend();
    return stiffness_n_mm * Math.min(Math.max((beyond(curvature) + w) / (2 * w), 0), 1);
  }
}
