package auricle.energy;

import auricle.geometry.Vectors;

/** A solid sphere; vertices stay outside. */
public final class SphereObstacle implements Obstacle {
  private final double[] centre;
  private final double radius;

  /**
   * @param centre mm
   * @param radius_mm &gt; 0
   */
  public SphereObstacle(double[] centre, double radius_mm) {
    if (!(radius_mm > 0)) {
      throw new IllegalArgumentException("sphere radius " + radius_mm + " mm must be positive");
    }
    this.centre = centre.clone();
    this.radius = radius_mm;
  }

  @Override
  public double distance(double[] x) {
    return Vectors.norm(Vectors.subtract(x, centre)) - radius;
  }

  @Override
  public double derivatives(double[] x, double[] gradient, double[] hessian) {
    double[] r = Vectors.subtract(x, centre);
    double length = Vectors.norm(r);
    for (int a = 0; a < 3; a++) {
      gradient[a] = r[a] / length;
    }
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        hessian[3 * a + b] = ((a == b ? 1 : 0) - gradient[a] * gradient[b]) / length;
      }
    }
    return length - radius;
  }
}
