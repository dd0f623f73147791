package auricle.surgery;

import auricle.equilibrium.TotalEnergy;

/** Everything that goes with the load factor: a rest shape that changes, threads that tighten. */
final class Growth implements RestFinder.Change {
  private final TotalEnergy energy;

  Growth(TotalEnergy energy) {
    this.energy = energy;
  }

  @Override
  public double[] motion(double share) {
    return new double[energy.size()];
  }

  @Override
  public void put(double share) {
    energy.setLoadFactor(share);
  }

  @Override
  public void end() {
    // nothing but the load factor was changed
  }
}
