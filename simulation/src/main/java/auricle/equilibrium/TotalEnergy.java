package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.energy.LoadFollower;
import auricle.mesh.MovingFrame;
import auricle.numerics.CliquePattern;
import auricle.numerics.SmoothFunction;
import auricle.numerics.SymmetricMatrix;
import auricle.numerics.SymmetricPattern;
import java.util.Arrays;
import java.util.List;

/**
 * The sum of all energy terms as a function of the free unknowns, at one load factor λ.
 *
 * <p>Supported unknowns are eliminated. All unknowns, supported ones included, are in {@link
 * #unknowns()}; the frames belong to them. Sums run in a fixed order on one thread, so the same
 * point always gives the same bits, and an evaluation allocates nothing.
 */
public final class TotalEnergy implements SmoothFunction {
  /** A step may tilt a director by no more than about 45°. */
  private static final double LARGEST_TILT = 1;

  private final List<AssembledTerm> terms;
  private final Supports supports;
  private final MovingFrame frames;
  private final double tiltLength;
  private final double extent;
  private final double[] u;
  private final double[] trial;
  private final double[] along;
  private final double[] gradient;
  private final double[] size;
  private CliquePattern pattern;
  private double[] localGradient = new double[0];
  private double[] localHessian = new double[0];
  private double loadFactor;
  private double energySize;

  /**
   * @param terms the energies; those that are {@link LoadFollower}s are given λ
   * @param supports which unknowns are not free
   * @param frames frames of the tilts; their present state belongs to the start
   * @param start all unknowns at λ = 0
   * @param tiltLength_mm length that a tilt of 1 rad moves, usually the length of an edge: makes
   *     moments comparable with forces
   */
  public TotalEnergy(
      List<? extends EnergyTerm> terms,
      Supports supports,
      MovingFrame frames,
      double[] start,
      double tiltLength_mm) {
    this.terms = terms.stream().map(AssembledTerm::new).toList();
    this.supports = supports;
    this.frames = frames;
    this.tiltLength = tiltLength_mm;
    this.u = start.clone();
    this.trial = start.clone();
    this.along = new double[start.length];
    this.gradient = new double[start.length];
    this.size = new double[start.length];
    this.extent = extent(start, supports.firstTilt());
    this.pattern = buildPattern();
    setLoadFactorOfTerms(0);
  }

  private static double extent(double[] start, int coordinates) {
    double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (int i = 0; i < coordinates; i++) {
      low[i % 3] = Math.min(low[i % 3], start[i]);
      high[i % 3] = Math.max(high[i % 3], start[i]);
    }
    double square = 0;
    for (int a = 0; a < Math.min(3, coordinates); a++) {
      square += (high[a] - low[a]) * (high[a] - low[a]);
    }
    return square > 0 ? Math.sqrt(square) : 1;
  }

  private CliquePattern buildPattern() {
    int longest = 0;
    int count = 0;
    for (AssembledTerm t : terms) {
      t.read();
      longest = Math.max(longest, t.longest());
      count += t.count();
    }
    int[][] cliques = new int[count][];
    int at = 0;
    for (AssembledTerm t : terms) {
      for (int i = 0; i < t.count(); i++) {
        cliques[at++] = Arrays.stream(t.stencil(i)).map(supports::freeNumber).toArray();
      }
    }
    localGradient = new double[longest];
    localHessian = new double[longest * longest];
    return new CliquePattern(supports.freeCount(), cliques);
  }

  /** Moves λ, and with it loads and prescribed unknowns, leaving the free ones where they are. */
  public void setLoadFactor(double lambda) {
    supports.move(loadFactor, lambda, u);
    setLoadFactorOfTerms(lambda);
  }

  private void setLoadFactorOfTerms(double lambda) {
    loadFactor = lambda;
    for (AssembledTerm t : terms) {
      if (t.term() instanceof LoadFollower follower) {
        follower.setLoadFactor(lambda);
      }
    }
  }

  /** λ. */
  public double loadFactor() {
    return loadFactor;
  }

  /** All unknowns at the point last settled; shared, not to be changed. */
  public double[] unknowns() {
    return u;
  }

  /** Which unknowns are free. */
  public Supports supports() {
    return supports;
  }

  /** The free unknowns of {@link #unknowns()}. */
  public double[] free() {
    double[] x = new double[size()];
    gather(u, x);
    return x;
  }

  /**
   * Derivative of the energy by every unknown at the last {@link #derivatives}, N and N·mm; shared.
   * At an equilibrium it is zero where free, and elsewhere the reaction: the force that the support
   * exerts on the body, positive along the unknown.
   */
  public double[] forces() {
    return gradient;
  }

  private void gather(double[] all, double[] x) {
    for (int k = 0; k < x.length; k++) {
      x[k] = all[supports.unknown(k)];
    }
  }

  private void scatter(double[] x, double[] all) {
    for (int k = 0; k < x.length; k++) {
      all[supports.unknown(k)] = x[k];
    }
  }

  private double[] trial(double[] x) {
    System.arraycopy(u, 0, trial, 0, u.length);
    scatter(x, trial);
    return trial;
  }

  @Override
  public int size() {
    return supports.freeCount();
  }

  @Override
  public SymmetricPattern pattern() {
    return pattern.pattern();
  }

  @Override
  public double value(double[] x) {
    double[] at = trial(x);
    double sum = 0;
    for (AssembledTerm t : terms) {
      for (int i = 0; i < t.count(); i++) {
        sum += t.term().value(i, at);
      }
    }
    return sum;
  }

  @Override
  public double derivatives(double[] x, double[] freeGradient, SymmetricMatrix hessian) {
    double[] at = trial(x);
    hessian.clear();
    Arrays.fill(gradient, 0);
    Arrays.fill(size, 0);
    energySize = 0;
    double sum = 0;
    int clique = 0;
    for (AssembledTerm t : terms) {
      for (int i = 0; i < t.count(); i++) {
        double energy = t.term().derivatives(i, at, localGradient, localHessian);
        sum += energy;
        energySize += Math.abs(energy);
        addGradient(t.stencil(i));
        pattern.add(clique++, localHessian, t.stencil(i).length, hessian.values());
      }
    }
    gather(gradient, freeGradient);
    return sum;
  }

  private void addGradient(int[] stencil) {
    for (int a = 0; a < stencil.length; a++) {
      gradient[stencil[a]] += localGradient[a];
      size[stencil[a]] += Math.abs(localGradient[a]);
    }
  }

  @Override
  public double largestStep(double[] x, double[] direction) {
    double[] at = trial(x);
    Arrays.fill(along, 0);
    scatter(direction, along);
    double largest = Double.POSITIVE_INFINITY;
    for (int i = supports.firstTilt(); i < along.length; i++) {
      largest = Math.min(largest, LARGEST_TILT / Math.abs(along[i]));
    }
    for (AssembledTerm t : terms) {
      largest = Math.min(largest, t.term().largestStep(at, along));
    }
    return largest;
  }

  @Override
  public void settle(double[] x) {
    scatter(x, u);
    frames.rebase(u);
    boolean stale = false;
    for (AssembledTerm t : terms) {
      t.term().update(u);
      stale |= t.stale();
    }
    if (stale) {
      pattern = buildPattern();
    }
    gather(u, x);
  }

  /** All unknowns, then the frames. */
  @Override
  public double[] save() {
    double[] saved = frames.save();
    double[] both = Arrays.copyOf(u, u.length + saved.length);
    System.arraycopy(saved, 0, both, u.length, saved.length);
    return both;
  }

  @Override
  public void restore(double[] saved) {
    System.arraycopy(saved, 0, u, 0, u.length);
    frames.restore(Arrays.copyOfRange(saved, u.length, saved.length));
  }

  @Override
  public double unit(int i) {
    return unitOf(supports.unknown(i));
  }

  private double unitOf(int unknown) {
    return unknown < supports.firstTilt() ? 1 : tiltLength;
  }

  @Override
  public double extent() {
    return extent;
  }

  @Override
  public double forceScale() {
    double largest = 0;
    for (int i = 0; i < size.length; i++) {
      largest = Math.max(largest, size[i] / unitOf(i));
    }
    return largest;
  }

  @Override
  public double valueRoundOff() {
    double sum = energySize;
    for (int i = 0; i < size.length; i++) {
      sum += size[i] * Math.abs(u[i]);
    }
    return 4 * Math.ulp(1.0) * sum;
  }

  @Override
  public String describe(int i) {
    int unknown = supports.unknown(i);
    int tilt = unknown - supports.firstTilt();
    return tilt < 0
        ? "%s of vertex %d".formatted("xyz".charAt(unknown % 3), unknown / 3)
        : "tilt %d of director %d".formatted(tilt % 2 + 1, tilt / 2);
  }
}
