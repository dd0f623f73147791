package auricle.analysis;

import auricle.energy.ShellState;
import auricle.equilibrium.EquilibriumState;

/** A state at rest as probes see it, while the directors are those of that state. */
final class EquilibriumView implements ShellView {
  private final ShellProblem problem;
  private final EquilibriumState state;
  private final TurnTracker turns;
  private final double[] u;
  private final double[] rest;
  private final double[] normals;
  private final ShellFields elastic;
  private final ShellFields total;

  EquilibriumView(
      ShellProblem problem,
      EquilibriumState state,
      TurnTracker turns,
      ShellState shell,
      ShellState seen) {
    this.problem = problem;
    this.state = state;
    this.turns = turns;
    this.u = state.unknowns();
    this.rest = problem.mesh().unknowns();
    this.normals = problem.mesh().normals();
    this.elastic = at(shell, state.loadFactor());
    this.total = problem.growing() ? at(seen, 1) : elastic;
  }

  private ShellFields at(ShellState shell, double restFactor) {
    shell.evaluate(u, restFactor);
    return ShellFields.of(shell, problem.topology());
  }

  @Override
  public double[] unknowns() {
    return u;
  }

  @Override
  public double loadFactor() {
    return state.loadFactor();
  }

  @Override
  public double displacement(int vertex, int c) {
    return u[3 * vertex + c] - rest[3 * vertex + c];
  }

  @Override
  public double directorChange(int vertex, int c) {
    double[] d = new double[3];
    problem.directors().value(vertex, u, d, 0);
    return d[c] - normals[3 * vertex + c];
  }

  @Override
  public double turned(String probe, int vertex) {
    return turns.turned(probe, vertex);
  }

  @Override
  public double reaction(int vertex, int c) {
    double[] d = new double[3];
    for (int k = 0; k < 3; k++) {
      d[k] = displacement(vertex, k);
    }
    double spring = problem.supportPlan().springForce(vertex, d, problem.sections().stiffest())[c];
    boolean held = problem.supports().freeNumber(3 * vertex + c) < 0;
    return spring + (held ? state.reaction(3 * vertex + c) : 0);
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
    return state.solution().value();
  }

  @Override
  public double tension(String thread) {
    return problem.thread(thread).tension(u);
  }
}
