package auricle.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/**
 * Delaunay triangulation of parameter points on a plane map of the surface that keeps its lengths
 * as far as it can: a rectangle, a band that goes on over its ends where the surface closes, or a
 * sector about the side that is a point.
 */
final class UnalignedCut {
  /** Smallest area of a triangle, in parts of the mean one; less is a rim point out of line. */
  private static final double SLIVER = 1e-9;

  private final PlaneMap map;
  private final Map<Coordinate, Integer> number = new HashMap<>();

  private UnalignedCut(PlaneMap map) {
    this.map = map;
  }

  /**
   * Triangles of the points.
   *
   * @throws IllegalArgumentException if the surface has no map: it has points on both sides, or a
   *     sector about a point is wider than half a turn
   */
  static List<int[]> triangles(ParametricSurface surface, List<double[]> parameters) {
    UnalignedCut cut = new UnalignedCut(PlaneMap.of(surface));
    List<int[]> triangles = new ArrayList<>();
    Geometry faces = cut.faces(parameters);
    for (int i = 0; i < faces.getNumGeometries(); i++) {
      Coordinate[] c = faces.getGeometryN(i).getCoordinates();
      double least = SLIVER * cut.map.area() / parameters.size();
      double area = twiceArea(c) / 2;
      if (Math.abs(area) > least && cut.map.isHome(c)) {
        int b = area > 0 ? 1 : 2;
        triangles.add(new int[] {cut.find(c[0]), cut.find(c[b]), cut.find(c[3 - b])});
      }
    }
    return triangles;
  }

  private Geometry faces(List<double[]> parameters) {
    for (int i = 0; i < parameters.size(); i++) {
      for (Coordinate c : map.images(parameters.get(i))) {
        number.put(c, i);
      }
    }
    DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
    builder.setSites(new ArrayList<>(number.keySet().stream().sorted().toList()));
    return builder.getTriangles(new GeometryFactory());
  }

  private int find(Coordinate c) {
    Integer found = number.get(new Coordinate(c.getX(), c.getY()));
    if (found == null) {
      throw new IllegalStateException("the triangulation made a point of its own");
    }
    return found;
  }

  private static double twiceArea(Coordinate[] c) {
    return (c[1].x - c[0].x) * (c[2].y - c[0].y) - (c[1].y - c[0].y) * (c[2].x - c[0].x);
  }
}
