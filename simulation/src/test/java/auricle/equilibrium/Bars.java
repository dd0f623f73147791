package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.geometry.Vectors;

/** Straight bars between vertices, W = ½ EA/L₀ (l − L₀)². */
final class Bars implements EnergyTerm {
  private final int[][] stencils;
  private final double[] stiffness;
  private final double[] length;

  /** Bars of the given EA, N, at rest in the given unknowns; pairs of vertices. */
  Bars(double axialStiffness, double[] rest, int... ends) {
    stencils = new int[ends.length / 2][];
    stiffness = new double[stencils.length];
    length = new double[stencils.length];
    for (int i = 0; i < stencils.length; i++) {
      int a = 3 * ends[2 * i];
      int b = 3 * ends[2 * i + 1];
      stencils[i] = new int[] {a, a + 1, a + 2, b, b + 1, b + 2};
      length[i] = Vectors.norm(Vectors.subtract(Vectors.at(rest, b), Vectors.at(rest, a)));
      stiffness[i] = axialStiffness / length[i];
    }
  }

  @Override
  public String name() {
    return "bars";
  }

  @Override
  public int count() {
    return stencils.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  private double[] span(int i, double[] u) {
    return Vectors.subtract(Vectors.at(u, stencils[i][3]), Vectors.at(u, stencils[i][0]));
  }

  @Override
  public double value(int i, double[] u) {
    double stretch = Vectors.norm(span(i, u)) - length[i];
    return stiffness[i] * stretch * stretch / 2;
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    double[] r = span(i, u);
    double l = Vectors.norm(r);
    double tension = stiffness[i] * (l - length[i]);
    for (int a = 0; a < 3; a++) {
      gradient[3 + a] = tension * r[a] / l;
      gradient[a] = -gradient[3 + a];
      for (int b = 0; b < 3; b++) {
        double along = r[a] * r[b] / (l * l);
        double h = stiffness[i] * along + tension / l * ((a == b ? 1 : 0) - along);
        hessian[(3 + a) * 6 + 3 + b] = h;
        hessian[a * 6 + b] = h;
        hessian[(3 + a) * 6 + b] = -h;
        hessian[a * 6 + 3 + b] = -h;
      }
    }
    return value(i, u);
  }
}
