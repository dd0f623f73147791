package auricle.equilibrium;

import auricle.energy.EnergyTerm;
import auricle.mesh.MovingFrame;
import auricle.numerics.SmoothFunction;
import auricle.numerics.SymmetricMatrix;
import auricle.numerics.SymmetricPattern;
import java.util.Arrays;
import java.util.List;

/**
 * The sum of all energy terms as a function of the free unknowns, at one load factor λ.
 *
 * <p>Supported unknowns are eliminated. All unknowns, supported ones included, are in {@link
 * #unknowns()}; the frames belong to them. Sums run in a fixed order, whatever the number of
 * threads, so the same point always gives the same bits, and an evaluation allocates nothing that
 * grows with the body.
 */
public final class TotalEnergy implements SmoothFunction {
  /** A step may tilt a director by no more than about 45°. */
  private static final double LARGEST_TILT = 1;

  /** After a step below this fraction of the extent the Hessian is exact for what it is asked. */
  private static final double SHORT = 5e-4;

  private final Assembly assembly;
  private final Supports supports;
  private final MovingFrame frames;
  private final double tiltLength;
  private final double extent;
  private final double[] u;
  private final double[] trial;
  private final double[] along;

  /** Where forces were linearised last. */
  private final double[] base;

  private double lastMove;

  /** Whether the Hessian evaluated last followed a short step. */
  private boolean exact = true;

  private double loadFactor;

  /** Energy that terms counting from the frames had when the frames were laid anew. */
  private double carried;

  /**
   * @param terms the energies; they are given λ
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
    this.assembly = new Assembly(terms, supports);
    this.supports = supports;
    this.frames = frames;
    this.tiltLength = tiltLength_mm;
    this.u = start.clone();
    this.trial = start.clone();
    this.along = new double[start.length];
    this.base = start.clone();
    this.extent = extent(start, supports.firstTilt());
    setLoadFactorOfTerms(0);
  }

  /** Diagonal of the box around all vertices, mm; 1 if it has none. */
  private static double extent(double[] start, int coordinates) {
    double square = 0;
    for (int a = 0; a < Math.min(3, coordinates); a++) {
      double low = start[a];
      double high = start[a];
      for (int i = a; i < coordinates; i += 3) {
        low = Math.min(low, start[i]);
        high = Math.max(high, start[i]);
      }
      square += (high - low) * (high - low);
    }
    return square > 0 ? Math.sqrt(square) : 1;
  }

  /** Moves λ, and with it loads and prescribed unknowns, leaving the free ones where they are. */
  public void setLoadFactor(double lambda) {
    supports.move(loadFactor, lambda, u);
    setLoadFactorOfTerms(lambda);
  }

  private void setLoadFactorOfTerms(double lambda) {
    loadFactor = lambda;
    carried = 0;
    for (EnergyTerm term : assembly.terms()) {
      term.setLoadFactor(lambda);
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

  /** A copy of the state of the frames that {@link #unknowns()} are measured in. */
  public double[] frames() {
    return frames.save();
  }

  /** The free unknowns of {@link #unknowns()}. */
  public double[] free() {
    double[] x = new double[size()];
    supports.gather(u, x);
    return x;
  }

  /**
   * Derivative of the energy by every unknown at the last evaluation of derivatives, N and N·mm;
   * shared. At an equilibrium it is zero where free, and elsewhere the reaction: what the support
   * exerts on the body, positive along the unknown.
   */
  public double[] forces() {
    return assembly.gradient();
  }

  /**
   * ∂g/∂λ at the free unknowns x, loads, threads and prescribed unknowns all moving: by central
   * differences, exact but for rounding where these are linear in λ.
   */
  public void loadRate(double[] x, double[] rate) {
    double lambda = loadFactor;
    double h = 1e-3 * Math.max(1e-3, Math.abs(lambda));
    double[] saved = u.clone();
    double[] before = new double[rate.length];
    gradientAt(lambda - h, x, before);
    gradientAt(lambda + h, x, rate);
    for (int k = 0; k < rate.length; k++) {
      rate[k] = (rate[k] - before[k]) / (2 * h);
    }
    System.arraycopy(saved, 0, u, 0, u.length);
    setLoadFactorOfTerms(lambda);
  }

  private void gradientAt(double lambda, double[] x, double[] g) {
    setLoadFactor(lambda);
    assembly.derivatives(trial(x), null);
    supports.gather(assembly.gradient(), g);
  }

  private double[] trial(double[] x) {
    System.arraycopy(u, 0, trial, 0, u.length);
    supports.scatter(x, trial);
    return trial;
  }

  @Override
  public int size() {
    return supports.freeCount();
  }

  @Override
  public SymmetricPattern pattern() {
    return assembly.pattern();
  }

  @Override
  public double value(double[] x) {
    return carried + assembly.value(trial(x));
  }

  @Override
  public double derivatives(double[] x, double[] gradient, SymmetricMatrix hessian) {
    hessian.clear();
    exact = lastMove <= SHORT * extent;
    double energy = assembly.derivatives(trial(x), hessian.values());
    supports.gather(assembly.gradient(), gradient);
    return carried + energy;
  }

  /**
   * Value and gradient alone, in the frames and with the partners of the point last settled.
   *
   * @param gradient filled, length n
   */
  @Override
  public double gradient(double[] x, double[] gradient) {
    double energy = assembly.derivatives(trial(x), null);
    supports.gather(assembly.gradient(), gradient);
    return carried + energy;
  }

  @Override
  public double largestStep(double[] x, double[] direction) {
    Arrays.fill(along, 0);
    supports.scatter(direction, along);
    double largest = Double.POSITIVE_INFINITY;
    for (int i = supports.firstTilt(); i < along.length; i++) {
      largest = Math.min(largest, LARGEST_TILT / Math.abs(along[i]));
    }
    // terms need not look farther than directors may tilt
    double share = Math.min(1, largest);
    for (int i = 0; share < 1 && i < along.length; i++) {
      along[i] *= share;
    }
    return Math.min(largest, share * assembly.largestStep(trial(x), along));
  }

  @Override
  public void settle(double[] x) {
    supports.scatter(x, u);
    lastMove = move();
    assembly.foresee(lastMove > 0 ? base : u, u);
    double before = assembly.valueFromFrames(u);
    frames.rebase(u);
    carried += before - assembly.valueFromFrames(u);
    assembly.update(u);
    supports.gather(u, x);
    System.arraycopy(u, 0, base, 0, u.length);
  }

  /**
   * Settles where something else than a step has led, or what acts has changed: nothing can be
   * foreseen from the place before.
   */
  public void begin(double[] x) {
    supports.scatter(x, u);
    System.arraycopy(u, 0, base, 0, u.length);
    settle(x);
  }

  private double move() {
    double most = 0;
    for (int i = 0; i < u.length; i++) {
      most = Math.max(most, Math.abs(u[i] - base[i]) * unitOf(i));
    }
    return most;
  }

  /** Whether the step before was short enough for foreseen forces to be those that are there. */
  @Override
  public boolean exact() {
    return exact;
  }

  /** λ, the energy carried, all unknowns, then the frames. */
  @Override
  public double[] save() {
    double[] saved = frames.save();
    double[] all = new double[2 + u.length + saved.length];
    all[0] = loadFactor;
    all[1] = carried;
    System.arraycopy(u, 0, all, 2, u.length);
    System.arraycopy(saved, 0, all, 2 + u.length, saved.length);
    return all;
  }

  @Override
  public void restore(double[] saved) {
    System.arraycopy(saved, 2, u, 0, u.length);
    frames.restore(Arrays.copyOfRange(saved, 2 + u.length, saved.length));
    setLoadFactorOfTerms(saved[0]);
    carried = saved[1];
    System.arraycopy(u, 0, base, 0, u.length);
    assembly.update(u);
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
    for (int i = 0; i < u.length; i++) {
      largest = Math.max(largest, assembly.size()[i] / unitOf(i));
    }
    return largest;
  }

  @Override
  public double valueRoundOff() {
    double sum = assembly.energySize();
    for (int i = 0; i < u.length; i++) {
      sum += assembly.size()[i] * Math.abs(u[i]);
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
