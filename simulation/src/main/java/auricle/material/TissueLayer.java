package auricle.material;

/**
 * A layer of tissue, elastic and the same in all directions.
 *
 * @param modulus_mpa Young's modulus at once, MPa, ≥ 0
 * @param thickness_mm mm; 0 where the layer is not there
 */
public record TissueLayer(double modulus_mpa, double thickness_mm) {
  /** No layer. */
  public static final TissueLayer NONE = new TissueLayer(0, 0);

  /**
   * @throws IllegalArgumentException if a number is negative or not finite
   */
  public TissueLayer {
    if (!(modulus_mpa >= 0 && thickness_mm >= 0)
        || Double.isInfinite(modulus_mpa)
        || Double.isInfinite(thickness_mm)) {
      throw new IllegalArgumentException(
          "a layer of %s MPa and %s mm".formatted(modulus_mpa, thickness_mm));
    }
  }

  /** Whether it carries anything. */
  boolean there() {
    return modulus_mpa > 0 && thickness_mm > 0;
  }

  /** The same with another thickness, mm. */
  public TissueLayer withThickness(double value_mm) {
    return new TissueLayer(modulus_mpa, value_mm);
  }
}
