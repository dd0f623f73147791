package auricle.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/** Delaunay triangulation of parameter points, measured in the true lengths of the surface. */
final class UnalignedCut {
  private UnalignedCut() {}

  /**
   * Triangles of the points; the surface may be neither closed nor end in a point.
   *
   * @throws IllegalArgumentException if it is
   */
  static List<int[]> triangles(ParametricSurface surface, List<double[]> parameters) {
    if (surface.closed() || surface.pointAtLow() || surface.pointAtHigh()) {
      throw new IllegalArgumentException("an unaligned mesh needs a surface with four sides");
    }
    double width = length(surface, true);
    double height = length(surface, false);
    Map<Coordinate, Integer> number = new HashMap<>();
    for (int i = 0; i < parameters.size(); i++) {
      double[] p = parameters.get(i);
      number.put(new Coordinate(width * p[0], height * p[1]), i);
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(new ArrayList<>(number.keySet().stream().sorted().toList()));
    Geometry faces = builder.getTriangles(new GeometryFactory());
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < faces.getNumGeometries(); i++) {
      Coordinate[] c = faces.getGeometryN(i).getCoordinates();
      if (twiceArea(c) > 1e-9 * width * height / parameters.size()) {
        triangles.add(new int[] {number(number, c[0]), number(number, c[1]), number(number, c[2])});
      } else if (twiceArea(c) < -1e-9 * width * height / parameters.size()) {
        triangles.add(new int[] {number(number, c[0]), number(number, c[2]), number(number, c[1])});
      }
    }
    return triangles;
  }

  private static int number(Map<Coordinate, Integer> number, Coordinate c) {
    Integer found = number.get(new Coordinate(c.getX(), c.getY()));
    if (found == null) {
      throw new IllegalStateException("the triangulation made a point of its own");
    }
    return found;
  }

  private static double twiceArea(Coordinate[] c) {
    return (c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[1].y - c[0].y) * (c[2].x - c[0].x);
  }

  /** Length of the middle line along s or along t. */
  private static double length(ParametricSurface surface, boolean alongS) {
    double[] from = new double[3];
    double[] to = new double[3];
    double[] normal = new double[3];
    surface.at(alongS ? 0 : 0.5, alongS ? 0.5 : 0, from, normal);
    double sum = 0;
    int steps = 64;
    for (int i = 1; i <= steps; i++) {
      double p = (double) i / steps;
      surface.at(alongS ? p : 0.5, alongS ? 0.5 : p, to, normal);
      double dx = to[0] - from[0];
      double dy = to[1] - from[1];
      double dz = to[2] - from[2];
      sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
      System.arraycopy(to, 0, from, 0, 3);
    }
    return sum;
  }
}
