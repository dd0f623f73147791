package auricle.equilibrium;

import auricle.energy.EnergyTerm;

/**
 * Springs that resist the turn of one segment against the next in the plane z = 0, W = ½ k θ²; the
 * turn counts within ±π. Stencil: x and y of three vertices.
 */
final class Joints implements EnergyTerm {
  private final int[][] stencils;
  private final double stiffness;

  /** Springs of k, N·mm, between the segments of the chain first, first + 1, …, last. */
  Joints(double stiffness, int first, int last) {
    this.stiffness = stiffness;
    stencils = new int[last - first - 1][];
    for (int i = 0; i < stencils.length; i++) {
      int a = 3 * (first + i);
      stencils[i] = new int[] {a, a + 1, a + 3, a + 4, a + 6, a + 7};
    }
  }

  @Override
  public String name() {
    return "joints";
  }

  @Override
  public int count() {
    return stencils.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  /** Turn at joint i, rad, anticlockwise positive. */
  double turn(int i, double[] u) {
    int[] s = stencils[i];
    double ax = u[s[2]] - u[s[0]];
    double ay = u[s[3]] - u[s[1]];
    double bx = u[s[4]] - u[s[2]];
    double by = u[s[5]] - u[s[3]];
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  @Override
  public double value(int i, double[] u) {
    double turn = turn(i, u);
    return stiffness * turn * turn / 2;
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    int[] s = stencils[i];
    double turn = turn(i, u);
    double[] slope = new double[6];
    double[] bend = new double[36];
    addAngle(u[s[2]] - u[s[0]], u[s[3]] - u[s[1]], 0, 2, -1, slope, bend);
    addAngle(u[s[4]] - u[s[2]], u[s[5]] - u[s[3]], 2, 4, 1, slope, bend);
    for (int r = 0; r < 6; r++) {
      gradient[r] = stiffness * turn * slope[r];
      for (int c = 0; c < 6; c++) {
        hessian[6 * r + c] = stiffness * (slope[r] * slope[c] + turn * bend[6 * r + c]);
      }
    }
    return value(i, u);
  }

  /** Adds the derivatives of the direction angle of a segment, times a sign. */
  private static void addAngle(
      double x, double y, int from, int to, int sign, double[] slope, double[] bend) {
    double q = x * x + y * y;
    double[] g = {-y / q, x / q};
    double[] h = {2 * x * y / (q * q), (y * y - x * x) / (q * q), 0, -2 * x * y / (q * q)};
    h[2] = h[1];
    for (int a = 0; a < 2; a++) {
      slope[to + a] += sign * g[a];
      slope[from + a] -= sign * g[a];
      for (int b = 0; b < 2; b++) {
        double second = sign * h[2 * a + b];
        bend[6 * (to + a) + to + b] += second;
        bend[6 * (from + a) + from + b] += second;
        bend[6 * (to + a) + from + b] -= second;
        bend[6 * (from + a) + to + b] -= second;
      }
    }
  }
}
