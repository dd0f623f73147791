package auricle.mesh;

/** A surface over the unit square, with its normal. */
public interface ParametricSurface {
  /**
   * The point and the unit normal at s, t in 0 … 1.
   *
   * @param point three numbers, filled, mm
   * @param normal three numbers, filled
   */
  void at(double s, double t, double[] point, double[] normal);

  /** Whether s = 1 is the same line as s = 0, with one set of vertices for both. */
  default boolean closed() {
    return false;
  }

  /** Whether the side t = 0 is a single point. */
  default boolean pointAtLow() {
    return false;
  }

  /** Whether the side t = 1 is a single point. */
  default boolean pointAtHigh() {
    return false;
  }
}
