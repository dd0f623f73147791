package auricle.energy;

/**
 * A point fixed in space, such as an anchor in bone.
 *
 * @param x mm
 * @param y mm
 * @param z mm
 */
public record FixedPoint(double x, double y, double z) implements MaterialPoint {
  @Override
  public int[] unknowns() {
    return new int[0];
  }

  @Override
  public double[] position(double[] u) {
    return new double[] {x, y, z};
  }

  @Override
  public double[] jacobian(double[] u) {
    return new double[0];
  }

  @Override
  public void addCurvature(double[] u, double[] w, double[] hessian) {
    // does not move
  }
}
