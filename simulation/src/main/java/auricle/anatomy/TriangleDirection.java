package auricle.anatomy;

import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;

/** Directions within triangles. */
final class TriangleDirection {
  private TriangleDirection() {}

  /** Angle from edge 0 of a triangle to a direction laid into its plane, anticlockwise, rad. */
  static double angle(ShellMesh mesh, int triangle, double[] direction) {
    double[][] p = new double[3][];
    for (int i = 0; i < 3; i++) {
      int v = mesh.topology().vertex(triangle, i);
      p[i] = new double[] {mesh.position(v, 0), mesh.position(v, 1), mesh.position(v, 2)};
    }
    double[] edge = Vectors.unit(Vectors.subtract(p[2], p[1]));
    double[] normal = Vectors.unit(Vectors.cross(edge, Vectors.subtract(p[0], p[1])));
    double[] side = Vectors.cross(normal, edge);
    return Math.atan2(Vectors.dot(direction, side), Vectors.dot(direction, edge));
  }
}
