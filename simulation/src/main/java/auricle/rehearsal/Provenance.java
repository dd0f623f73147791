package auricle.rehearsal;

import java.util.List;

/**
 * What a result rests on, apart from the scenario itself.
 *
 * @param version of this program
 * @param java version of the run-time system
 * @param mesh name of the mesh level
 * @param vertices number of vertices
 * @param triangles number of triangles
 * @param unknowns number of unknowns solved for
 * @param worstResidual_n largest residual of all steps, N
 * @param iterations Newton iterations of all steps
 * @param conventions rules of this project that figures depend on, in words
 */
public record Provenance(
    String version,
    String java,
    String mesh,
    int vertices,
    int triangles,
    int unknowns,
    double worstResidual_n,
    int iterations,
    List<String> conventions) {
  /** Keeps its own copy of the list. */
  public Provenance {
    conventions = List.copyOf(conventions);
  }
}
