package auricle.energy;

/**
 * A rigid, fixed, convex body that vertices may not enter, given by the distance from its surface.
 *
 * <p>Convexity matters: the distance is then a convex function along any straight step, so that
 * Newton's iteration for the place where a step meets the body never overshoots it.
 */
public sealed interface Obstacle permits PlaneObstacle, SphereObstacle, EllipsoidObstacle {
  /** Distance of x from the surface, mm; negative inside. */
  double distance(double[] x);

  /**
   * Distance with its derivatives; for x outside.
   *
   * @param gradient filled with the outward unit normal at the closest point, {@code double[3]}
   * @param hessian filled with the second derivative, 3 × 3, row by row, 1/mm
   * @return distance, mm
   */
  double derivatives(double[] x, double[] gradient, double[] hessian);
}
