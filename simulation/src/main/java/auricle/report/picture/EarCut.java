package auricle.report.picture;

import auricle.rehearsal.DeformedEar;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The wall of an ear where a horizontal plane cuts it. */
final class EarCut {
  /** A plane through a vertex would cut edges in a point of two: it is moved by this much. */
  private static final double ASIDE_MM = 1.3e-5;

  /** The wall seen aslant is drawn at most so much thicker than it is. */
  private static final double LARGEST_SLANT = 2;

  private final float[] points;
  private final float[] normals;
  private final float[] thickness;
  private final int[] triangles;
  private final double height_mm;

  private EarCut(DeformedEar ear, double height_mm) {
    this.points = ear.points();
    this.normals = ear.normals();
    this.thickness = ear.thickness();
    this.triangles = ear.triangles();
    this.height_mm = height_mm + ASIDE_MM;
  }

  /**
   * A place on the mid-surface in the plane of the cut.
   *
   * @param lateral_mm away from the head
   * @param anterior_mm towards the face
   * @param halfLateral_mm from there to the anterior face in the plane, lateral part
   * @param halfAnterior_mm the same, anterior part
   */
  record Place(
      double lateral_mm, double anterior_mm, double halfLateral_mm, double halfAnterior_mm) {}

  /** Height of a level in the present shape, mm. */
  static double height_mm(DeformedEar ear, double level_percent) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < ear.vertexCount(); v++) {
      low = Math.min(low, ear.point(v).superior_mm());
      high = Math.max(high, ear.point(v).superior_mm());
    }
    return low + level_percent / 100 * (high - low);
  }

  /** The pieces of the wall in the plane at a height, each a line along the mid-surface. */
  static List<List<Place>> at(DeformedEar ear, double height_mm) {
    return new EarCut(ear, height_mm).pieces();
  }

  private List<List<Place>> pieces() {
    Map<Long, List<Long>> next = new LinkedHashMap<>();
    for (int t = 0; t < triangles.length; t += 3) {
      List<Long> cut = cutEdges(t);
      if (cut.size() == 2) {
        next.computeIfAbsent(cut.get(0), e -> new ArrayList<>()).add(cut.get(1));
        next.computeIfAbsent(cut.get(1), e -> new ArrayList<>()).add(cut.get(0));
      }
    }
    Set<Long> done = new HashSet<>();
    List<List<Place>> pieces = new ArrayList<>();
    next.forEach((edge, ways) -> addFrom(edge, ways.size() == 1, next, done, pieces));
    next.forEach((edge, ways) -> addFrom(edge, true, next, done, pieces));
    return pieces;
  }

  private void addFrom(
      long start,
      boolean wanted,
      Map<Long, List<Long>> next,
      Set<Long> done,
      List<List<Place>> pieces) {
    if (!wanted || done.contains(start)) {
      return;
    }
    Map<Long, Place> line = new LinkedHashMap<>();
    long at = start;
    while (done.add(at)) {
      line.put(at, place(at));
      for (long way : next.getOrDefault(at, List.of())) {
        if (!done.contains(way)) {
          at = way;
          break;
        }
      }
    }
    pieces.add(new ArrayList<>(line.values()));
  }

  private List<Long> cutEdges(int t) {
    List<Long> cut = new ArrayList<>(2);
    for (int c = 0; c < 3; c++) {
      int a = triangles[t + c];
      int b = triangles[t + (c + 1) % 3];
      if (above(a) != above(b)) {
        cut.add(((long) Math.min(a, b) << 32) | Math.max(a, b));
      }
    }
    return cut;
  }

  private boolean above(int vertex) {
    return points[3 * vertex + 2] > height_mm;
  }

  private Place place(long edge) {
    int a = (int) (edge >> 32);
    int b = (int) edge;
    double w = (height_mm - points[3 * a + 2]) / (points[3 * b + 2] - points[3 * a + 2]);
    double nx = mix(normals[3 * a], normals[3 * b], w);
    double ny = mix(normals[3 * a + 1], normals[3 * b + 1], w);
    double inPlane = Math.max(Math.hypot(nx, ny), 1 / LARGEST_SLANT);
    double half = mix(thickness[a], thickness[b], w) / 2 / (inPlane * inPlane);
    return new Place(
        mix(points[3 * a], points[3 * b], w),
        mix(points[3 * a + 1], points[3 * b + 1], w),
        half * nx,
        half * ny);
  }

  private static double mix(double a, double b, double w) {
    return a + w * (b - a);
  }
}
