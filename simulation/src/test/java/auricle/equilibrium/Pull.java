package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import java.util.Arrays;

/** A dead load on one unknown, W = −λ F u. */
final class Pull implements EnergyTerm {
  private final int unknown;
  private final double force;
  private double loadFactor = 1;

  Pull(int unknown, double force) {
    this.unknown = unknown;
    this.force = force;
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
  }

  @Override
  public String name() {
    return "pull";
  }

  @Override
  public int count() {
    return 1;
  }

  @Override
  public int[] stencil(int i) {
    return new int[] {unknown};
  }

  @Override
  public double value(int i, double[] u) {
    return -loadFactor * force * u[unknown];
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    gradient[0] = -loadFactor * force;
    Arrays.fill(hessian, 0, 1, 0);
    return value(i, u);
  }
}
