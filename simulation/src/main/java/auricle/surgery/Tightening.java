package auricle.surgery;

import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;

/**
 * Where a body at rest will about come to rest when one of its threads, which pulls at T₀ now, is
 * tied otherwise. Without that thread, whose own stiffness is k₀ = W″(L), the body yields to a unit
 * of its tension by
 *
 * <pre> u = −y / (1 − k₀ y·∂L/∂x),   y = K⁻¹ ∂L/∂x,   c = −∂L/∂x · u mm, </pre>
 *
 * so that, with another rest length L₀, the thread, stretched by T L₀/EA itself, will pull at
 *
 * <pre> T = (L − L₀ + c T₀) / (c + L₀/EA), </pre>
 *
 * or at nothing, and the body moves by u (T − T₀).
 */
final class Tightening {
  /** Least share of the stiffness along the thread that is not its own; rounding makes it less. */
  private static final double LEAST_SHARE = 1e-6;

  private final TotalEnergy energy;
  private final Linearisation point;

  /**
   * @param energy at rest
   * @param point of this energy, factorised there
   */
  Tightening(TotalEnergy energy, Linearisation point) {
    this.energy = energy;
    this.point = point;
  }

  /** The motion of the free unknowns when a thread gets a rest length, mm. */
  double[] toLength(BodyThread thread, double restLength_mm) {
    double excess = thread.thread().length(energy.unknowns()) - restLength_mm;
    double now = thread.thread().tension(energy.unknowns());
    if (!point.usable() || (excess <= 0 && now <= 0)) {
      return new double[energy.size()];
    }
    double[] motion = yielding(thread);
    double give = -along(thread, motion);
    double ownGive = restLength_mm / thread.axialStiffness_n();
    double tension = Math.max(0, (excess + give * now) / (give + ownGive));
    return scaled(motion, tension - now);
  }

  /** The motion of the free unknowns when a thread is pulled at a tension, N. */
  double[] toTension(BodyThread thread, double tension_n) {
    if (!point.usable()) {
      return new double[energy.size()];
    }
    return scaled(yielding(thread), tension_n - thread.thread().tension(energy.unknowns()));
  }

  /** The rest length, mm, with which a thread will pull at about a tension, N: T above, for L₀. */
  double lengthFor(BodyThread thread, double tension_n) {
    double length = thread.thread().length(energy.unknowns());
    double now = thread.thread().tension(energy.unknowns());
    double give = point.usable() ? -along(thread, yielding(thread)) : 0;
    return (length + give * (now - tension_n)) / (1 + tension_n / thread.axialStiffness_n());
  }

  private static double[] scaled(double[] motion, double factor) {
    for (int k = 0; k < motion.length; k++) {
      motion[k] *= factor;
    }
    return motion;
  }

  /** u, mm/N. */
  private double[] yielding(BodyThread body) {
    double[] motion = slope(body);
    point.solve(motion, motion);
    ElasticThread thread = body.thread();
    double own = thread.law().stiffness(thread.length(energy.unknowns()));
    double share = Math.max(LEAST_SHARE, 1 - own * along(body, motion));
    return scaled(motion, -1 / share);
  }

  private double along(BodyThread thread, double[] motion) {
    double[] slope = slope(thread);
    double sum = 0;
    for (int k = 0; k < motion.length; k++) {
      sum += slope[k] * motion[k];
    }
    return sum;
  }

  /** ∂L/∂x on the free unknowns: the gradient at a pull of one newton. */
  private double[] slope(BodyThread body) {
    ElasticThread thread = body.thread();
    double[] slope = new double[energy.size()];
    ThreadLaw law = thread.law();
    thread.follow(new ThreadLaw.ConstantPull(1));
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
    thread.follow(law);
    return slope;
  }
}
