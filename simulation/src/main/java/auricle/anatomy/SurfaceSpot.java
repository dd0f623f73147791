package auricle.anatomy;

import auricle.mesh.Topology;

/**
 * A point of the mid-surface that moves with it: barycentric weights on a triangle.
 *
 * @param triangle index of the triangle
 * @param weight1 weight of corner 1
 * @param weight2 weight of corner 2; corner 0 has the rest
 */
public record SurfaceSpot(int triangle, double weight1, double weight2) {
  /** Weight of a corner (0, 1, 2). */
  public double weight(int corner) {
    return switch (corner) {
      case 0 -> 1 - weight1 - weight2;
      case 1 -> weight1;
      default -> weight2;
    };
  }

  /**
   * Where the point is, mm.
   *
   * @param topology the mesh
   * @param coordinates x, y, z of each vertex, mm; unknowns of a shell will do
   */
  public double[] position(Topology topology, double[] coordinates) {
    double[] p = new double[3];
    for (int i = 0; i < 3; i++) {
      int from = 3 * topology.vertex(triangle, i);
      for (int c = 0; c < 3; c++) {
        p[c] += weight(i) * coordinates[from + c];
      }
    }
    return p;
  }
}
