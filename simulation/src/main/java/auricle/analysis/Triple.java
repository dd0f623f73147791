package auricle.analysis;

/**
 * Three numbers of a model: a point (mm), a direction or a force (N).
 *
 * @param x first component
 * @param y second component
 * @param z third component
 */
public record Triple(double x, double y, double z) {
  /** The three numbers as an array of their own. */
  public double[] array() {
    return new double[] {x, y, z};
  }

  /** Whether all three are zero, so that they give no direction. */
  public boolean isZero() {
    return x == 0 && y == 0 && z == 0;
  }
}
