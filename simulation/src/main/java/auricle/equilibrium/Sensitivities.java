package auricle.equilibrium;

import auricle.numerics.Linearisation;

/**
 * How a state at rest answers to small changes: of parameters, du/dp = −K⁻¹ ∂g/∂p, and what a
 * measurement m(u) feels of all forces at once, K⁻¹ ∂m/∂u. Both cost one solution with the factor,
 * and any number of them one factorisation.
 *
 * <p>Tilts are those of the frames at the state. Valid as long as the energy stays where it is.
 */
public final class Sensitivities {
  private final TotalEnergy energy;
  private final Linearisation point;

  /**
   * @param energy at a state at rest
   * @throws IllegalStateException if the state has no stiffness to speak of: a mechanism or exactly
   *     a critical point
   */
  public Sensitivities(TotalEnergy energy) {
    this(energy, new Linearisation(energy));
  }

  /** The same with a linearisation of this energy that is there already, for its memory. */
  public Sensitivities(TotalEnergy energy, Linearisation linearisation) {
    this.energy = energy;
    point = linearisation;
    boolean finite = point.evaluate(energy.free());
    point.factorize(true);
    if (!finite || !point.usable() || point.negativePivots() < 0) {
      throw new IllegalStateException("no sensitivities: the stiffness is singular here");
    }
  }

  /**
   * The rate of all unknowns by a parameter; zero where supported.
   *
   * @param forceRate ∂g/∂p, the rate of the derivative of the energy by every unknown while all
   *     unknowns stay
   */
  public double[] rate(double[] forceRate) {
    return answer(forceRate, -1);
  }

  /** The rate of all unknowns by the load factor; prescribed unknowns count as zero. */
  public double[] rateByLoadFactor() {
    double[] x = new double[energy.size()];
    energy.loadRate(energy.free(), x);
    double[] all = new double[energy.unknowns().length];
    energy.supports().scatter(x, all);
    return rate(all);
  }

  /**
   * λ such that dm/dp = −λ · ∂g/∂p for every parameter p that m does not depend on directly: the
   * adjoint of a measurement.
   *
   * @param measureRate ∂m/∂u by every unknown
   */
  public double[] adjoint(double[] measureRate) {
    return answer(measureRate, 1);
  }

  /** sign · K⁻¹ b on the free unknowns, zero elsewhere. */
  private double[] answer(double[] b, int sign) {
    double[] x = new double[energy.size()];
    energy.supports().gather(b, x);
    point.solve(x, x);
    for (int k = 0; k < x.length; k++) {
      x[k] *= sign;
    }
    double[] all = new double[b.length];
    energy.supports().scatter(x, all);
    return all;
  }
}
