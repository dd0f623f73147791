package auricle.energy;

import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;

/**
 * A point and a triangle that both move, and how far they may: by conservative advancement. What is
 * farther apart than its floor by g and approaches at most at speed s is safe for g/s (Li, Kaufman,
 * Jiang 2021, ACM Trans. Graph. 40(4) 170, §5, additive continuous collision detection).
 */
final class Approach {
  /** Share of the present gap that a step leaves open. */
  private static final double LEFT_OPEN = 0.1;

  private static final int MOST_ADVANCES = 200;

  private final double[] x;
  private final double[] v;
  private final double[][] corners;
  private final double[][] along;
  private final double speed;
  private final double distance;
  private double floor;

  /**
   * @param x the point
   * @param v its motion over the whole step
   * @param corners of the triangle
   * @param along their motion
   * @param speed bound on the approach over the whole step
   */
  Approach(double[] x, double[] v, double[][] corners, double[][] along, double speed) {
    this.x = x;
    this.v = v;
    this.corners = corners;
    this.along = along;
    this.speed = speed;
    distance = new SimplexDistance(x, corners).distance();
  }

  /** Distance at the start. */
  double distance() {
    return distance;
  }

  /** Sets the distance that must be left over. */
  void keep(double least) {
    floor = least;
  }

  /**
   * Safe fraction of the step.
   *
   * @param most fraction beyond which it is of no interest: no more than this is looked at
   */
  double safe(double most) {
    double now = distance - floor;
    double left = now;
    double t = 0;
    for (int k = 0; k < MOST_ADVANCES && speed > 0 && t < most; k++) {
      double spare = left - LEFT_OPEN * now;
      t += Math.max(spare, 0) / speed;
      if (spare <= LEFT_OPEN * now) {
        return t;
      }
      left = new SimplexDistance(Vectors.add(x, t, v), moved(t)).distance() - floor;
    }
    return speed > 0 ? t : 1;
  }

  private double[][] moved(double t) {
    return new double[][] {
      Vectors.add(corners[0], t, along[0]),
      Vectors.add(corners[1], t, along[1]),
      Vectors.add(corners[2], t, along[2])
    };
  }
}
