package auricle.mesh;

import auricle.geometry.Vectors;

/**
 * Shape of the triangles of a mesh, for reports.
 *
 * @param vertices number of vertices
 * @param triangles number of triangles
 * @param area_mm2 sum of the triangles' areas
 * @param shortestEdge_mm length of the shortest edge
 * @param longestEdge_mm length of the longest edge
 * @param meanEdge_mm mean length of the edges
 * @param smallestAngle_deg smallest angle of any triangle
 * @param largestAngle_deg largest angle of any triangle
 */
public record MeshQuality(
    int vertices,
    int triangles,
    double area_mm2,
    double shortestEdge_mm,
    double longestEdge_mm,
    double meanEdge_mm,
    double smallestAngle_deg,
    double largestAngle_deg) {

  /** The figures of a mesh. */
  public static MeshQuality of(ShellMesh mesh) {
    double[] x = mesh.positions();
    Topology topology = mesh.topology();
    double shortest = Double.POSITIVE_INFINITY;
    double longest = 0;
    double sum = 0;
    for (int e = 0; e < topology.edgeCount(); e++) {
      double length = Vectors.norm(side(x, topology.edgeStart(e), topology.edgeEnd(e)));
      shortest = Math.min(shortest, length);
      longest = Math.max(longest, length);
      sum += length;
    }
    double area = 0;
    double least = Math.PI;
    double most = 0;
    for (int c = 0; c < 3 * topology.triangleCount(); c++) {
      int at = topology.vertex(c / 3, c % 3);
      double[] a = side(x, at, topology.vertex(c / 3, (c + 1) % 3));
      double[] b = side(x, at, topology.vertex(c / 3, (c + 2) % 3));
      double twiceArea = Vectors.norm(Vectors.cross(a, b));
      double angle = Math.atan2(twiceArea, Vectors.dot(a, b));
      area += twiceArea / 6;
      least = Math.min(least, angle);
      most = Math.max(most, angle);
    }
    return new MeshQuality(
        mesh.vertexCount(),
        topology.triangleCount(),
        area,
        shortest,
        longest,
        sum / topology.edgeCount(),
        Math.toDegrees(least),
        Math.toDegrees(most));
  }

  private static double[] side(double[] x, int from, int to) {
    return Vectors.subtract(Vectors.at(x, 3 * to), Vectors.at(x, 3 * from));
  }
}
