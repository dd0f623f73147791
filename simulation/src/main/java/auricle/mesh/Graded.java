package auricle.mesh;

/**
 * A surface whose parameters run faster and faster, or slower and slower, so that a grid on it has
 * cells in geometric progression.
 *
 * @param base the surface
 * @param first length of a cell at s = 1 over that at s = 0
 * @param second length of a cell at t = 1 over that at t = 0
 */
public record Graded(ParametricSurface base, double first, double second)
    implements ParametricSurface {
  /**
   * Checks the ratios.
   *
   * @throws IllegalArgumentException for ratios that are not positive, and for one other than 1
   *     around a closed surface
   */
  public Graded {
    if (!(first > 0 && second > 0) || Double.isInfinite(first + second)) {
      throw new IllegalArgumentException("gradings must be positive");
    }
    if (base.closed() && first != 1) {
      throw new IllegalArgumentException("a surface that closes cannot be graded around");
    }
  }

  @Override
  public void at(double s, double t, double[] point, double[] normal) {
    base.at(place(s, first), place(t, second), point, normal);
  }

  /** Integral of the density ratio^u from 0 to u, over that to 1; 0 and 1 are met exactly. */
  private static double place(double u, double ratio) {
    double rate = Math.log(ratio);
    return rate == 0 ? u : Math.expm1(rate * u) / Math.expm1(rate);
  }

  @Override
  public boolean closed() {
    return base.closed();
  }

  @Override
  public boolean pointAtLow() {
    return base.pointAtLow();
  }

  @Override
  public boolean pointAtHigh() {
    return base.pointAtHigh();
  }
}
