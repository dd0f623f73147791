package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;

/** The half space under a plane. */
public final class PlaneObstacle implements Obstacle {
  private final double[] point;
  private final double[] normal;

  /**
   * @param point any point of the plane, mm
   * @param normal any vector that points to the free side; made a unit vector here
   */
  public PlaneObstacle(double[] point, double[] normal) {
    this.point = point.clone();
    this.normal = Vectors.unit(normal);
  }

  @Override
  public double distance(double[] x) {
    return Vectors.dot(normal, Vectors.subtract(x, point));
  }

  @Override
  public double derivatives(double[] x, double[] gradient, double[] hessian) {
    System.arraycopy(normal, 0, gradient, 0, 3);
    Arrays.fill(hessian, 0, 9, 0);
    return distance(x);
  }
}
