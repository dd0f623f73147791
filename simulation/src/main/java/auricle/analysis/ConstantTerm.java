package auricle.analysis;

import auricle.energy.EnergyTerm;

/** A load that acts in full whatever the load factor. */
final class ConstantTerm implements EnergyTerm {
  private final EnergyTerm load;

  ConstantTerm(EnergyTerm load) {
    this.load = load;
    load.setLoadFactor(1);
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    // always in full
  }

  @Override
  public String name() {
    return load.name();
  }

  @Override
  public int count() {
    return load.count();
  }

  @Override
  public int[] stencil(int i) {
    return load.stencil(i);
  }

  @Override
  public double value(int i, double[] u) {
    return load.value(i, u);
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    return load.derivatives(i, u, gradient, hessian);
  }

  @Override
  public double largestStep(double[] u, double[] direction) {
    return load.largestStep(u, direction);
  }

  @Override
  public int stencilVersion() {
    return load.stencilVersion();
  }

  @Override
  public void update(double[] u) {
    load.update(u);
  }
}
