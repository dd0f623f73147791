package auricle.analysis;

import auricle.energy.ShellState;
import auricle.geometry.Vectors;

/** A linear solution as probes see it. */
final class LinearView implements ShellView {
  private static final double SMALL = 1e-5;

  private final ShellProblem problem;
  private final double[] rest;
  private final double[] change;
  private final double[] forces;
  private final double energy;
  private final ShellFields elastic;
  private final ShellFields total;

  /**
   * @param change change of all unknowns
   * @param forces stiffness times change less loads: what supports exert
   */
  LinearView(ShellProblem problem, double[] change, double[] forces, double energy) {
    this.problem = problem;
    this.rest = problem.start();
    this.change = change;
    this.forces = forces;
    this.energy = energy;
    ShellState state = problem.state();
    this.total = slope(problem.seen());
    this.elastic =
        problem.growing() ? slope(state).plus(1, at(state, 0, 1)).plus(-1, at(state, 0, 0)) : total;
  }

  /** Strain is a curve in the unknowns: its slope at rest, by a small central difference. */
  private ShellFields slope(ShellState state) {
    double largest = 1e-300;
    for (double c : change) {
      largest = Math.max(largest, Math.abs(c));
    }
    double step = SMALL * GeometricSelectors.size(problem.mesh()) / largest;
    return at(state, step, 0).plus(-1, at(state, -step, 0)).times(1 / (2 * step));
  }

  private ShellFields at(ShellState state, double step, double loadFactor) {
    double[] u = rest.clone();
    for (int i = 0; i < u.length; i++) {
      u[i] += step * change[i];
    }
    state.evaluate(u, loadFactor);
    return ShellFields.of(state, problem.topology());
  }

  @Override
  public double loadFactor() {
    return 1;
  }

  @Override
  public double displacement(int vertex, int c) {
    return change[3 * vertex + c];
  }

  @Override
  public double directorChange(int vertex, int c) {
    int w = problem.directors().unknowns().director(vertex);
    return change[w] * problem.directors().frame(vertex, 1, c)
        + change[w + 1] * problem.directors().frame(vertex, 2, c);
  }

  /** δθ = a·(e × δd) / |e|², e the part of the director across the axis. */
  @Override
  public double turned(String probe, int vertex) {
    double[] d = new double[3];
    double[] moved = new double[3];
    for (int c = 0; c < 3; c++) {
      d[c] = problem.directors().frame(vertex, 0, c);
      moved[c] = directorChange(vertex, c);
    }
    double[] axis =
        problem.probes().turns().stream()
            .filter(f -> f.probe().equals(probe))
            .map(FollowedTurn::axis)
            .findFirst()
            .orElseThrow();
    double[] e = Vectors.add(d, -Vectors.dot(d, axis), axis);
    return Vectors.dot(axis, Vectors.cross(e, moved)) / Vectors.dot(e, e);
  }

  @Override
  public double reaction(int vertex, int c) {
    double[] d = Vectors.at(change, 3 * vertex);
    double spring = problem.supportPlan().springForce(vertex, d, problem.sections().stiffest())[c];
    boolean held = problem.supports().freeNumber(3 * vertex + c) < 0;
    return spring + (held ? forces[3 * vertex + c] : 0);
  }

  @Override
  public ShellFields elastic() {
    return elastic;
  }

  @Override
  public ShellFields total() {
    return total;
  }

  @Override
  public double energy() {
    return energy;
  }

  @Override
  public double[] unknowns() {
    double[] u = rest.clone();
    for (int i = 0; i < u.length; i++) {
      u[i] += change[i];
    }
    return u;
  }

  @Override
  public double tension(String thread) {
    return problem.thread(thread).tension(unknowns());
  }
}
