package auricle.surgery;

import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;
import java.util.function.DoubleUnaryOperator;

/**
 * Where a body will about come to rest when one of its threads gets another rest length L₀: it
 * yields to a unit of tension by u = −K⁻¹ ∂L/∂x, c = −∂L/∂x · u mm, so that the thread, stretched
 * by T L₀/EA itself, pulls at
 *
 * <pre> T = (L − L₀) / (c + L₀/EA) </pre>
 */
final class Tightening {
  private final TotalEnergy energy;
  private final Linearisation point;

  /**
   * @param energy at rest, the thread in question pulling at nothing
   * @param point of this energy; evaluated and factorised here
   */
  Tightening(TotalEnergy energy, Linearisation point) {
    this.energy = energy;
    this.point = point;
  }

  /**
   * The motion of the free unknowns when a thread gets a rest length, mm; none if it is slack
   * there, or if it pulls already: then one step of Newton's method does as well.
   */
  double[] toLength(BodyThread thread, double restLength_mm) {
    double excess = thread.thread().length(energy.unknowns()) - restLength_mm;
    if (excess <= 0 || thread.thread().tension(energy.unknowns()) > 0) {
      return new double[energy.size()];
    }
    double ownGive = restLength_mm / thread.axialStiffness_n();
    return yielding(thread, give -> excess / (give + ownGive));
  }

  /** The motion of the free unknowns when a thread is pulled at a tension, N. */
  double[] toTension(BodyThread thread, double tension_n) {
    return yielding(thread, give -> tension_n);
  }

  private double[] yielding(BodyThread thread, DoubleUnaryOperator tensionOfGive) {
    double[] motion = new double[energy.size()];
    if (!point.evaluate(energy.free())) {
      return motion;
    }
    point.factorize(false);
    if (!point.usable()) {
      return motion;
    }
    double[] slope = slope(thread);
    point.solve(slope, motion);
    double give = 0;
    for (int k = 0; k < motion.length; k++) {
      give += slope[k] * motion[k];
    }
    double tension = tensionOfGive.applyAsDouble(give);
    for (int k = 0; k < motion.length; k++) {
      motion[k] *= -tension;
    }
    return motion;
  }

  /** ∂L/∂x on the free unknowns: the gradient at a pull of one newton. */
  private double[] slope(BodyThread body) {
    ElasticThread thread = body.thread();
    double[] slope = new double[energy.size()];
    ThreadLaw law = thread.law();
    thread.pull(1);
    thread.setLoadFactor(1);
    EnergyTerm term = thread;
    int[] stencil = term.stencil(0);
    double[] gradient = new double[stencil.length];
    term.derivatives(0, energy.unknowns(), gradient, new double[stencil.length * stencil.length]);
    for (int i = 0; i < stencil.length; i++) {
      int free = energy.supports().freeNumber(stencil[i]);
      if (free >= 0) {
        slope[free] = gradient[i];
      }
    }
    body.follow(law);
    return slope;
  }
}
