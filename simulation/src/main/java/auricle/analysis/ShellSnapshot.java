package auricle.analysis;

import java.util.List;

/** A shell at one load step, for drawing: positions at rest, triangles, and fields. */
public final class ShellSnapshot {
  private final double[] rest;
  private final int[] triangles;
  private final List<FieldData> pointFields;
  private final List<FieldData> cellFields;

  /**
   * @param rest coordinates of the starting shape, three a vertex, mm
   * @param triangles three vertices a triangle
   * @param pointFields fields at the vertices
   * @param cellFields fields at the triangles
   */
  public ShellSnapshot(
      double[] rest, int[] triangles, List<FieldData> pointFields, List<FieldData> cellFields) {
    this.rest = rest;
    this.triangles = triangles;
    this.pointFields = List.copyOf(pointFields);
    this.cellFields = List.copyOf(cellFields);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return rest.length / 3;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles.length / 3;
  }

  /** Coordinate c of a vertex in the starting shape, mm. */
  public double coordinate(int vertex, int c) {
    return rest[3 * vertex + c];
  }

  /** Vertex at a corner of a triangle. */
  public int corner(int triangle, int c) {
    return triangles[3 * triangle + c];
  }

  /** Fields at the vertices. */
  public List<FieldData> pointFields() {
    return pointFields;
  }

  /** Fields at the triangles. */
  public List<FieldData> cellFields() {
    return cellFields;
  }
}
