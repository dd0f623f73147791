package auricle.numerics;

import java.util.List;

/**
 * How a minimisation ended and how it went there.
 *
 * @param outcome how it ended
 * @param reason the same in words
 * @param value of the function at the end (energy, mJ)
 * @param residual largest |g_i| / unit_i at the end (N)
 * @param tolerance what the residual had to come below (N)
 * @param negativePivots negative eigenvalues of the Hessian at the end; -1 if it could not be
 *     factorised
 * @param iterations the iteration table
 */
public record NewtonResult(
    Outcome outcome,
    String reason,
    double value,
    double residual,
    double tolerance,
    int negativePivots,
    List<NewtonIteration> iterations) {
  /** Keeps its own copy of the table. */
  public NewtonResult {
    iterations = List.copyOf(iterations);
  }

  /** Whether forces balance. */
  public boolean converged() {
    return outcome == Outcome.CONVERGED;
  }

  /** Whether the Hessian was not positive definite at some point on the way. */
  public boolean metNegativeCurvature() {
    return iterations.stream().anyMatch(i -> i.negativePivots() != 0);
  }

  /** All factorisations together. */
  public int factorisations() {
    return iterations.stream().mapToInt(NewtonIteration::factorisations).sum();
  }
}
