package auricle.surgery;

import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.ThreadLaw;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.Linearisation;
import java.util.Arrays;

/**
 * Where a body at rest, or nearly, will about come to rest when one of its threads, which pulls at
 * T₀ now, is tied otherwise. With that thread, whose own stiffness is k₀ = W″(L), the body answers
 * to a pull q that is added along it by −q y, and the thread then pulls by q s more,
 *
 * <pre> y = K⁻¹ ∂L/∂x,   a = y·∂L/∂x,   s = 1 − k₀ a </pre>
 *
 * (s ≤ 0: the body softens, and stands by the length of the thread alone). Another rest length L₀
 * adds
 *
 * <pre> q = (L − L₀ − T₀ L₀/EA) / (a + s L₀/EA), </pre>
 *
 * but never so little that the thread would push. Where the body is only about at rest, what is
 * left of the way there, −K⁻¹ g, is added.
 */
final class Tightening {
  /** Least share of the stiffness along the thread that is not its own; rounding makes it less. */
  private static final double LEAST_SHARE = 1e-6;

  private final TotalEnergy energy;
  private final Linearisation point;
  private final BodyThread thread;

  /** y, mm/N; nothing where the point cannot be solved with. */
  private final double[] answer;

  /** a, mm/N. */
  private final double give;

  /** s. */
  private final double share;

  private final double length;
  private final double tension;

  /**
   * @param energy at rest or nearly
   * @param point of this energy, factorised there
   */
  Tightening(TotalEnergy energy, Linearisation point, BodyThread thread) {
    this.energy = energy;
    this.point = point;
    this.thread = thread;
    length = thread.thread().length(energy.unknowns());
    tension = thread.thread().tension(energy.unknowns());
    double[] slope = slope();
    answer = new double[slope.length];
    if (point.usable()) {
      point.solve(slope, answer);
    }
    give = dot(slope, answer);
    share = 1 - thread.thread().law().stiffness(length) * give;
  }

  /** The motion of the free unknowns when the thread gets a rest length, mm. */
  double[] toLength(double restLength_mm) {
    double excess = length - restLength_mm;
    if (!point.usable() || (excess <= 0 && tension <= 0)) {
      return new double[energy.size()];
    }
    double own = restLength_mm / thread.axialStiffness_n();
    double added = (excess - tension * own) / (give + share * own);
    double least = share > LEAST_SHARE ? -tension / share : Double.NEGATIVE_INFINITY;
    return toRest(scaled(answer, -Math.max(added, least)));
  }

  /** The motion of the free unknowns when the thread is pulled at a tension, N. */
  double[] toTension(double tension_n) {
    if (!point.usable()) {
      return new double[energy.size()];
    }
    return toRest(scaled(answer, -addedFor(tension_n)));
  }

  private double addedFor(double tension_n) {
    return (tension_n - tension) / Math.max(share, LEAST_SHARE);
  }

  /** The rest length, mm, with which the thread will pull at about a tension, N. */
  double lengthFor(double tension_n) {
    return lengthAfter(addedFor(tension_n));
  }

  /**
   * The same, or as far in its direction as the body may go at once.
   *
   * @param part of that distance that may be gone
   */
  double lengthTowards(double tension_n, double part) {
    double added = addedFor(tension_n);
    return lengthAfter(added * Math.min(1, part * Stride.share(energy, scaled(answer, added))));
  }

  private double lengthAfter(double added) {
    double then = tension + added * share;
    return (length - added * give) / (1 + then / thread.axialStiffness_n());
  }

  /** Adds what is left of the way to rest as it is. */
  private double[] toRest(double[] motion) {
    double[] left = new double[motion.length];
    point.solve(point.gradient(), left);
    for (int k = 0; k < motion.length; k++) {
      motion[k] -= left[k];
    }
    return motion;
  }

  private static double[] scaled(double[] motion, double factor) {
    return Arrays.stream(motion).map(m -> m * factor).toArray();
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  /** ∂L/∂x on the free unknowns: the gradient at a pull of one newton. */
  private double[] slope() {
    ElasticThread pulling = thread.thread();
    double[] slope = new double[energy.size()];
    ThreadLaw law = pulling.law();
    pulling.follow(new ThreadLaw.ConstantPull(1));
    EnergyTerm term = pulling;
    int[] stencil = term.stencil(0);
    double[] gradient = new double[stencil.length];
    term.derivatives(0, energy.unknowns(), gradient, new double[stencil.length * stencil.length]);
    for (int i = 0; i < stencil.length; i++) {
      int free = energy.supports().freeNumber(stencil[i]);
      if (free >= 0) {
        slope[free] = gradient[i];
      }
    }
    pulling.follow(law);
    return slope;
  }
}
