package auricle.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Triangles (the plates) and the edges (the hinges) between them.
 *
 * <p>Local edge k of a triangle lies opposite its corner k and runs from corner (k+1) mod 3 to
 * corner (k+2) mod 3. An edge runs from its {@link #edgeStart} to its {@link #edgeEnd}; {@link
 * #edgeSign} is +1 in the triangle that meets it in that direction (its left side), -1 in the other
 * (its right side). Edges are numbered in the order in which the triangles first meet them.
 *
 * <p>Only for checked input: an edge with three triangles, or met twice in one direction, is an
 * {@link IllegalArgumentException} here. Readers and generators report such meshes as findings.
 */
public final class Topology {
  private final int vertexCount;
  private final int[] triangles;
  private final int[] triangleEdges;
  private final int[] edgeEnds;
  private final int[] edgeTriangles;

  /**
   * @param vertexCount number of vertices
   * @param triangles three vertex indices a triangle, anticlockwise seen against the normal
   */
  public Topology(int vertexCount, int[] triangles) {
    this.vertexCount = vertexCount;
    this.triangles = triangles.clone();
    this.triangleEdges = new int[triangles.length];
    int[] ends = new int[2 * triangles.length];
    int[] sides = new int[2 * triangles.length];
    Arrays.fill(sides, -1);
    Map<Long, Integer> known = new HashMap<>();
    for (int corner = 0; corner < triangles.length; corner++) {
      int t = corner / 3;
      int from = triangles[3 * t + (corner + 1) % 3];
      int to = triangles[3 * t + (corner + 2) % 3];
      long key = (long) Math.min(from, to) * vertexCount + Math.max(from, to);
      Integer met = known.get(key);
      int edge = met == null ? known.size() : met;
      if (met == null) {
        known.put(key, edge);
        ends[2 * edge] = from;
        ends[2 * edge + 1] = to;
      }
      int side = 2 * edge + (ends[2 * edge] == from ? 0 : 1);
      if (sides[side] >= 0) {
        throw new IllegalArgumentException(
            "triangles "
                + sides[side]
                + " and "
                + t
                + " meet edge "
                + from
                + "-"
                + to
                + " in the same direction");
      }
      sides[side] = t;
      triangleEdges[corner] = edge;
    }
    this.edgeEnds = Arrays.copyOf(ends, 2 * known.size());
    this.edgeTriangles = Arrays.copyOf(sides, 2 * known.size());
  }

  /** Number of vertices. */
  public int vertexCount() {
    return vertexCount;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles.length / 3;
  }

  /** Number of edges. */
  public int edgeCount() {
    return edgeEnds.length / 2;
  }

  /** Layout of the unknowns of a shell on this mesh, one director a vertex. */
  public Unknowns unknowns() {
    return new Unknowns(vertexCount, vertexCount);
  }

  /** Vertex at a corner (0, 1, 2) of a triangle. */
  public int vertex(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  /** The edge opposite a corner (0, 1, 2) of a triangle. */
  public int edge(int triangle, int corner) {
    return triangleEdges[3 * triangle + corner];
  }

  /** +1 if the triangle meets that edge from start to end, -1 if from end to start. */
  public int edgeSign(int triangle, int corner) {
    return edgeEnds[2 * edge(triangle, corner)] == vertex(triangle, (corner + 1) % 3) ? 1 : -1;
  }

  /** First vertex of an edge. */
  public int edgeStart(int edge) {
    return edgeEnds[2 * edge];
  }

  /** Last vertex of an edge. */
  public int edgeEnd(int edge) {
    return edgeEnds[2 * edge + 1];
  }

  /** The triangle left of an edge (which meets it start to end), or -1. */
  public int leftTriangle(int edge) {
    return edgeTriangles[2 * edge];
  }

  /** The triangle right of an edge (which meets it end to start), or -1. */
  public int rightTriangle(int edge) {
    return edgeTriangles[2 * edge + 1];
  }

  /** Whether only one triangle meets the edge. */
  public boolean isBoundary(int edge) {
    return leftTriangle(edge) < 0 || rightTriangle(edge) < 0;
  }

  /** A copy of the triangle array, three vertex indices a triangle. */
  public int[] triangles() {
    return triangles.clone();
  }
}
