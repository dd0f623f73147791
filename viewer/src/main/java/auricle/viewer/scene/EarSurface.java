package auricle.viewer.scene;

import java.util.List;
import java.util.Map;

/**
 * A triangulated mid-surface as it is drawn: a right ear in the ear frame (x lateral, y anterior, z
 * superior; mm). Immutable by agreement: arrays are handed out without copying because they are
 * drawn at every frame; nobody writes to them.
 */
public final class EarSurface {
  /** An ear that moves by less looks the same. */
  private static final double SEEN_MM = 0.02;

  private final float[] points;
  private final float[] normals;
  private final float[] thickness;
  private final int[] triangles;
  private final List<String> regions;
  private final Map<String, float[]> fields;

  /**
   * @param points x, y, z of each vertex, mm
   * @param normals unit normal at each vertex, towards the visible face, three numbers each
   * @param thickness of the wall at each vertex, mm
   * @param triangles three vertices each, anticlockwise seen against the normals
   * @param regions name of the region of each triangle
   * @param fields one number a vertex, by name
   */
  public EarSurface(
      float[] points,
      float[] normals,
      float[] thickness,
      int[] triangles,
      List<String> regions,
      Map<String, float[]> fields) {
    if (points.length != normals.length || points.length != 3 * thickness.length) {
      throw new IllegalArgumentException("each vertex needs a place, a normal and a thickness");
    }
    this.points = points;
    this.normals = normals;
    this.thickness = thickness;
    this.triangles = triangles;
    this.regions = List.copyOf(regions);
    this.fields = Map.copyOf(fields);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return thickness.length;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles.length / 3;
  }

  /** x, y, z of each vertex, mm; not to be written to. */
  public float[] points() {
    return points;
  }

  /** Unit normal of each vertex; not to be written to. */
  public float[] normals() {
    return normals;
  }

  /** Thickness of the wall at each vertex, mm; not to be written to. */
  public float[] thickness() {
    return thickness;
  }

  /** Three vertices a triangle; not to be written to. */
  public int[] triangles() {
    return triangles;
  }

  /** Name of the region of a triangle; empty where none is known. */
  public String region(int triangle) {
    return triangle < regions.size() ? regions.get(triangle) : "";
  }

  /** Fields by name, one number a vertex; not to be written to. */
  public Map<String, float[]> fields() {
    return fields;
  }

  /**
   * The same surface, but within the wall of another, without thickness of its own, where a vertex
   * is nearer to that of the other than a distance; as it is if the other has other vertices.
   */
  public EarSurface withinWhereNear(EarSurface other, double nearer_mm) {
    if (other.vertexCount() != vertexCount()) {
      return this;
    }
    float[] place = points.clone();
    float[] wall = thickness.clone();
    for (int v = 0; v < vertexCount(); v++) {
      if (apart(other, v) < nearer_mm) {
        System.arraycopy(other.points, 3 * v, place, 3 * v, 3);
        wall[v] = 0;
      }
    }
    return new EarSurface(place, normals, wall, triangles, regions, fields);
  }

  private double apart(EarSurface other, int v) {
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double d = points[3 * v + c] - other.points[3 * v + c];
      square += d * d;
    }
    return Math.sqrt(square);
  }

  /** Whether another surface with the same vertices looks as if nothing had moved. */
  public boolean looksLike(EarSurface other) {
    return !movedBy(other, SEEN_MM);
  }

  /** Whether another surface with the same vertices has one that lies farther than this away. */
  public boolean movedBy(EarSurface other, double farther_mm) {
    if (other.vertexCount() != vertexCount()) {
      return false;
    }
    for (int v = 0; v < vertexCount(); v++) {
      if (apart(other, v) > farther_mm) {
        return true;
      }
    }
    return false;
  }

  /** Whether another surface has the same triangles, so that one may be moved into the other. */
  public boolean sameTriangles(EarSurface other) {
    return triangles == other.triangles || java.util.Arrays.equals(triangles, other.triangles);
  }

  /** Place of a spot in a triangle: (1 − w1 − w2), w1, w2 are the weights of its vertices; mm. */
  public Spot place(int triangle, double w1, double w2) {
    double[] weights = {1 - w1 - w2, w1, w2};
    double[] p = new double[3];
    for (int k = 0; k < 3; k++) {
      for (int c = 0; c < 3; c++) {
        p[c] += weights[k] * points[3 * triangles[3 * triangle + k] + c];
      }
    }
    return new Spot(p[0], p[1], p[2]);
  }
}
