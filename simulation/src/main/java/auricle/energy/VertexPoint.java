package auricle.energy;

import auricle.geometry.Vectors;

/**
 * A vertex of the mid-surface.
 *
 * @param vertex its index
 */
public record VertexPoint(int vertex) implements MaterialPoint {
  @Override
  public int[] unknowns() {
    return new int[] {3 * vertex, 3 * vertex + 1, 3 * vertex + 2};
  }

  @Override
  public double[] position(double[] u) {
    return Vectors.at(u, 3 * vertex);
  }

  @Override
  public double[] jacobian(double[] u) {
    return new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
  }

  @Override
  public void addCurvature(double[] u, double[] w, double[] hessian) {
    // linear
  }
}
