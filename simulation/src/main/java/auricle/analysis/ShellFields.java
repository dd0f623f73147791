package auricle.analysis;

import auricle.energy.ShellState;
import auricle.mesh.Topology;

/**
 * Elastic strain (E11, E22, 2 E12) and change of curvature (K11, K22, 2 K12) of every triangle in
 * the axes of its section, as plain numbers that can be added.
 */
final class ShellFields {
  private final double[] values;

  private ShellFields(double[] values) {
    this.values = values;
  }

  /** A copy of what a state holds at present. */
  static ShellFields of(ShellState state, Topology topology) {
    double[] values = new double[6 * topology.triangleCount()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int a = 0; a < 3; a++) {
        values[6 * t + a] = state.strain(t, a);
        values[6 * t + 3 + a] = state.curvature(t, a);
      }
    }
    return new ShellFields(values);
  }

  /** This plus a factor times another. */
  ShellFields plus(double factor, ShellFields other) {
    double[] sum = values.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * other.values[i];
    }
    return new ShellFields(sum);
  }

  /** This times a factor. */
  ShellFields times(double factor) {
    return plus(factor - 1, this);
  }

  /** The six numbers of a triangle. */
  double[] at(int triangle) {
    double[] six = new double[6];
    System.arraycopy(values, 6 * triangle, six, 0, 6);
    return six;
  }
}
