package auricle.anatomy;

import auricle.geometry.Vectors;

/** A point of the floor of the bowl with its normal, in the ear frame. */
final class FloorSpot {
  private static final double STEP = 1e-4;
  private final double[] point;
  private final double[] normal;

  /**
   * @param u forwards in the lateral view, mm at normal size
   * @param v upwards
   */
  FloorSpot(LateralView view, Floor floor, double u, double v) {
    point = view.point(u, v, floor.height(u, v));
    double alongU = (floor.height(u + STEP, v) - floor.height(u - STEP, v)) / (2 * STEP);
    double alongV = (floor.height(u, v + STEP) - floor.height(u, v - STEP)) / (2 * STEP);
    normal = Vectors.unit(Vectors.cross(view.vector(1, 0, alongU), view.vector(0, 1, alongV)));
  }

  double[] point() {
    return point;
  }

  double[] normal() {
    return normal;
  }
}
