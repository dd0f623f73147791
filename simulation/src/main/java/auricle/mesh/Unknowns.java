package auricle.mesh;

/**
 * How the unknowns of a shell are laid out in one array: x, y, z of vertex 0, of vertex 1, …, then
 * the director angle of edge 0, of edge 1, ….
 *
 * @param vertexCount number of vertices
 * @param edgeCount number of edges
 */
public record Unknowns(int vertexCount, int edgeCount) {
  /** Total number of unknowns, 3 V + E. */
  public int size() {
    return 3 * vertexCount + edgeCount;
  }

  /** Index of the first (x) coordinate of a vertex; y and z follow. */
  public int vertex(int vertex) {
    return 3 * vertex;
  }

  /** Index of the director angle of an edge, rad. */
  public int edge(int edge) {
    return 3 * vertexCount + edge;
  }
}
