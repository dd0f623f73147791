package auricle.energy;

/**
 * A point that threads and loads hold on to, with its position p(u) and the first two derivatives
 * by the few unknowns it depends on.
 */
public sealed interface MaterialPoint permits SurfacePoint, MeanPoint, VertexPoint, FixedPoint {
  /** The n unknowns that move the point, without repetition; shared, not to be changed. */
  int[] unknowns();

  /** Position, mm, {@code double[3]}. */
  double[] position(double[] u);

  /** Derivative of the position, 3 × n: entry {@code a * n + k} is ∂p_a / ∂u_k. */
  double[] jacobian(double[] u);

  /**
   * Adds Σ_a w_a ∂²p_a / ∂u_k ∂u_l.
   *
   * @param w weights, {@code double[3]}
   * @param hessian n × n, row by row
   */
  void addCurvature(double[] u, double[] w, double[] hessian);
}
