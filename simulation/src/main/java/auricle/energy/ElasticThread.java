package auricle.energy;

import auricle.geometry.Vectors;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A thread led without friction through k ≥ 2 points, open or closed to a loop: one length, one
 * tension all along, pulling only.
 *
 * <pre>
 *   W = law(L),   L = Σ_s μ(|p_{s+1} − p_s|)
 * </pre>
 *
 * <p>μ is the {@link RoundedLength}: a segment's own length, unless its ends are nearer each other
 * than the thread is thick, where they meet and its pull fades out. Without that the pull would
 * turn about at once where two points meet, and no rest there be stationary. A segment of no length
 * counts 3/8 of the thickness.
 *
 * <p>One contribution. Its stencil holds every unknown of the points once, ascending. The law may
 * be changed between solutions, never within one.
 *
 * <p>Tying by length: {@link #tieToLength}, or step by step {@link #tighten}. Tying at a tension:
 * {@link #pull}, solve, then {@link #knot}, which keeps the length of thread that is then in the
 * loop.
 *
 * <p>Left out: friction at the bites, and the thread's path between bites around the surface (it
 * runs straight).
 */
public final class ElasticThread implements EnergyTerm {
  /** A thread of no thickness has this one, mm, so that derivatives are finite. */
  private static final double THINNEST = 1e-4;

  private final String name;
  private final PointStencil points;
  private final boolean closed;
  private final double axialStiffness;
  private final double thickness;
  private double loadFactor = 1;
  private double foreseen = Double.NaN;
  private ThreadLaw law = new ThreadLaw.ConstantPull(0);
  private DoubleFunction<ThreadLaw> lawAt = lambda -> new ThreadLaw.ConstantPull(0);

  /** A thread of no thickness that does not pull yet. */
  public ElasticThread(
      String name, List<MaterialPoint> points, boolean closed, double axialStiffness_N) {
    this(name, points, closed, axialStiffness_N, 0);
  }

  /**
   * A thread that does not pull yet.
   *
   * @param name what it is called in messages
   * @param points the points in the order in which the thread passes them
   * @param closed whether it returns from the last to the first
   * @param axialStiffness_N EA: force per unit strain
   * @param thickness_mm its diameter: points that are nearer each other meet
   * @throws IllegalArgumentException for fewer than two points or a stiffness that is not positive
   */
  public ElasticThread(
      String name,
      List<MaterialPoint> points,
      boolean closed,
      double axialStiffness_N,
      double thickness_mm) {
    if (points.size() < 2 || !(axialStiffness_N > 0) || Double.isInfinite(axialStiffness_N)) {
      throw new IllegalArgumentException(
          "%s: %d points and axial stiffness %s N; expected at least 2 and a positive stiffness"
              .formatted(name, points.size(), axialStiffness_N));
    }
    this.name = name;
    this.points = new PointStencil(points);
    this.closed = closed;
    this.axialStiffness = axialStiffness_N;
    this.thickness = Math.max(thickness_mm, THINNEST);
  }

  /** The same thread, which does not pull yet. */
  public ElasticThread fresh() {
    return new ElasticThread(name, points.points(), closed, axialStiffness, thickness);
  }

  /** From now on elastic with the given rest length, mm, whatever the load factor. */
  public void tieToLength(double restLength_mm) {
    follow(lambda -> new ThreadLaw.Elastic(axialStiffness, restLength_mm));
  }

  /**
   * From now on elastic with a rest length that goes with the load factor λ: from the first length
   * at λ = 0 to the second at λ = 1, mm. From the present length, it tightens out of nothing.
   *
   * @throws IllegalArgumentException if a length is not positive and finite
   */
  public void tighten(double from_mm, double to_mm) {
    double from = new ThreadLaw.Elastic(axialStiffness, from_mm).restLength_mm();
    double change = new ThreadLaw.Elastic(axialStiffness, to_mm).restLength_mm() - from;
    follow(lambda -> elastic(from + lambda * change));
  }

  private ThreadLaw elastic(double restLength) {
    return restLength > 0
        ? new ThreadLaw.Elastic(axialStiffness, restLength)
        : new ThreadLaw.Impossible();
  }

  /**
   * From now on pulled at λ times the given tension, N, whatever the length.
   *
   * @throws IllegalArgumentException if the tension is negative or not finite
   */
  public void pull(double tension_N) {
    pull(0, tension_N);
  }

  /** The same from one tension at load factor 0 to another at 1, N. */
  public void pull(double from_N, double to_N) {
    double from = new ThreadLaw.ConstantPull(from_N).tension_N();
    double change = new ThreadLaw.ConstantPull(to_N).tension_N() - from;
    // a predictor may look a little below zero
    follow(lambda -> new ThreadLaw.ConstantPull(Math.max(0, from + lambda * change)));
  }

  /**
   * From now on let out: at λ = 0 as it is, then longer and longer, at λ = 1 it pulls at nothing.
   * Led by its length, not by its tension, the body cannot run away under it.
   */
  public void letGo() {
    ThreadLaw none = new ThreadLaw.ConstantPull(0);
    if (law instanceof ThreadLaw.Elastic tied) {
      double rate = tied.axialStiffness_N() / tied.restLength_mm();
      follow(lambda -> lambda < 1 ? letOut(tied.restLength_mm() * (1 + lambda), rate) : none);
    } else {
      follow(lambda -> none);
    }
  }

  private static ThreadLaw letOut(double restLength, double rate) {
    return new ThreadLaw.Elastic(rate * restLength, restLength);
  }

  /** From now on by the given law, whatever the load factor. */
  public void follow(ThreadLaw given) {
    follow(lambda -> given);
  }

  private void follow(DoubleFunction<ThreadLaw> laws) {
    lawAt = laws;
    law = laws.apply(loadFactor);
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
    law = lawAt.apply(loadFactor);
  }

  /**
   * Ties the thread as it is: elastic, with the rest length at which the present tension T acts at
   * the present length L, L₀ = L EA / (EA + T).
   */
  public void knot(double[] u) {
    tieToLength(length(u) * axialStiffness / (axialStiffness + tension(u)));
  }

  /** The law in force. */
  public ThreadLaw law() {
    return law;
  }

  /** Present length along all segments, mm. */
  public double length(double[] u) {
    double length = 0;
    double[][] p = points.positions(u);
    for (int s = 0; s < segments(p.length); s++) {
      length += segment(Vectors.subtract(p[(s + 1) % p.length], p[s])).value();
    }
    return length;
  }

  /** Present tension, N; zero when slack. */
  public double tension(double[] u) {
    return law.tension(length(u));
  }

  private RoundedLength segment(double[] r) {
    return new RoundedLength(Vectors.dot(r, r), thickness);
  }

  private int segments(int pointCount) {
    return closed ? pointCount : pointCount - 1;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return 1;
  }

  @Override
  public int[] stencil(int i) {
    return points.stencil();
  }

  @Override
  public double value(int i, double[] u) {
    return law.energy(length(u));
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    double[][] p = points.positions(u);
    int n = 3 * p.length;
    double length = length(u);
    double tension = law.tension(length);
    double turned = Double.isNaN(foreseen) ? tension : foreseen;
    double[] g = new double[n];
    double[] h = new double[n * n];
    for (int s = 0; s < segments(p.length); s++) {
      addSegment(s, (s + 1) % p.length, p, turned, g, h);
    }
    double stiffness = law.stiffness(length);
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        h[r * n + c] += stiffness * g[r] * g[c];
      }
    }
    for (int r = 0; r < n; r++) {
      g[r] *= tension;
    }
    points.pullBack(u, g, h, gradient, hessian);
    return law.energy(length);
  }

  /** Tension T(from) + T' ∂L (to − from), never below zero. */
  @Override
  public void foresee(int i, double[] from, double[] to) {
    double[][] p = points.positions(from);
    double[][] q = points.positions(to);
    double longer = 0;
    for (int s = 0; s < segments(p.length); s++) {
      int e = (s + 1) % p.length;
      double[] r = Vectors.subtract(p[e], p[s]);
      double[] change = Vectors.subtract(Vectors.subtract(q[e], q[s]), r);
      longer += 2 * segment(r).slope() * Vectors.dot(r, change);
    }
    double length = length(from);
    foreseen = Math.max(0, law.tension(length) + law.stiffness(length) * longer);
  }

  /** Adds one segment's ∂L/∂p to g and T ∂²L/∂p² to h, by the derivatives of μ by |r|². */
  private void addSegment(int from, int to, double[][] p, double tension, double[] g, double[] h) {
    double[] r = Vectors.subtract(p[to], p[from]);
    double slope = 2 * segment(r).slope();
    double bending = 4 * segment(r).bend();
    int n = g.length;
    for (int a = 0; a < 3; a++) {
      g[3 * to + a] += slope * r[a];
      g[3 * from + a] -= slope * r[a];
      for (int b = 0; b < 3; b++) {
        double bend = tension * ((a == b ? slope : 0) + bending * r[a] * r[b]);
        h[(3 * to + a) * n + 3 * to + b] += bend;
        h[(3 * from + a) * n + 3 * from + b] += bend;
        h[(3 * to + a) * n + 3 * from + b] -= bend;
        h[(3 * from + a) * n + 3 * to + b] -= bend;
      }
    }
  }
}
