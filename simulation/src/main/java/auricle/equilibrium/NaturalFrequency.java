package auricle.equilibrium;

import auricle.numerics.Linearisation;

/**
 * The lowest natural frequency of a body about a state at rest: K v = ω² M v, with the stiffness of
 * the energy and masses lumped on the unknowns, by inverse iteration (Bathe 2014, Finite Element
 * Procedures, section 11.2). Small motions, no damping.
 */
public final class NaturalFrequency {
  private static final int MOST_ROUNDS = 500;
  private static final double SETTLED = 1e-10;

  private NaturalFrequency() {}

  /**
   * The frequency, Hz.
   *
   * @param energy at a state at rest
   * @param mass_g mass on every unknown, supported ones included, g; none on tilts
   * @throws IllegalStateException if the state has no stiffness to speak of, or the iteration does
   *     not settle
   */
  public static double lowest_hz(TotalEnergy energy, double[] mass_g) {
    Linearisation point = new Linearisation(energy);
    boolean finite = point.evaluate(energy.free());
    point.factorize(true);
    if (!finite || !point.usable() || point.negativePivots() != 0) {
      throw new IllegalStateException("no vibration about a state that is not stable");
    }
    double[] mass = new double[energy.size()];
    energy.supports().gather(mass_g, mass);
    double square = iterate(point, mass);
    // N/mm over g is 10⁶ / s²
    return Math.sqrt(square * 1e6) / (2 * Math.PI);
  }

  /** ω², N/mm/g. */
  private static double iterate(Linearisation point, double[] mass) {
    double[] v = new double[mass.length];
    double[] image = new double[mass.length];
    for (int i = 0; i < v.length; i++) {
      // an irregular start, so that no symmetry hides the mode
      v[i] = 1 + Math.sin(12.9898 * i);
    }
    double last = 0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double norm = Math.sqrt(moment(mass, v, v));
      for (int i = 0; i < v.length; i++) {
        v[i] /= norm;
        image[i] = mass[i] * v[i];
      }
      double[] next = new double[v.length];
      point.solve(image, next);
      double square = 1 / moment(mass, v, next);
      if (Math.abs(square - last) <= SETTLED * square) {
        return square;
      }
      last = square;
      System.arraycopy(next, 0, v, 0, v.length);
    }
    throw new IllegalStateException("the lowest frequency was not found by inverse iteration");
  }

  private static double moment(double[] mass, double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < mass.length; i++) {
      sum += mass[i] * a[i] * b[i];
    }
    return sum;
  }
}
