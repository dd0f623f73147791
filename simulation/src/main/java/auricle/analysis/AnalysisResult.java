package auricle.analysis;

import java.util.List;

/**
 * What a run gave.
 *
 * @param converged whether every step asked for was reached and is an equilibrium
 * @param outcome in a sentence
 * @param remarks what a reader should know: what is doubtful in the mesh, snaps, limit points
 * @param size mesh and unknowns
 * @param steps the load steps, in order; the last may be one that did not converge
 * @param checks expected values against those computed
 */
public record AnalysisResult(
    boolean converged,
    String outcome,
    List<String> remarks,
    Size size,
    List<StepResult> steps,
    List<CheckResult> checks) {

  /**
   * Size of the problem.
   *
   * @param vertices of the mesh
   * @param triangles of the mesh
   * @param edges of the mesh
   * @param unknowns all of them
   * @param freeUnknowns those not held by supports
   */
  public record Size(int vertices, int triangles, int edges, int unknowns, int freeUnknowns) {}

  /** Whether every expected value was met. */
  public boolean expectationsMet() {
    return checks.stream().allMatch(CheckResult::met);
  }
}
