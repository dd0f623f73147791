package auricle.mesh;

/**
 * How the unknowns of a shell are laid out in one array: x, y, z of vertex 0, of vertex 1, …, then
 * the two tilts w1, w2 of director 0, of director 1, ….
 *
 * @param vertexCount number of vertices V
 * @param directorCount number of directors; V, or more where a cut gives a vertex several
 */
public record Unknowns(int vertexCount, int directorCount) {
  /** Total number of unknowns, 3 V + 2 directors. */
  public int size() {
    return 3 * vertexCount + 2 * directorCount;
  }

  /** Index of the first (x) coordinate of a vertex, mm; y and z follow. */
  public int vertex(int vertex) {
    return 3 * vertex;
  }

  /** Index of the first tilt w1 of a director (dimensionless, rad while small); w2 follows. */
  public int director(int director) {
    return 3 * vertexCount + 2 * director;
  }
}
