package auricle.analysis;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import auricle.equilibrium.PathLevel;
import auricle.equilibrium.PathSettings;
import auricle.numerics.NewtonSettings;
import java.util.ArrayList;
import java.util.List;

/** What a path is followed to: the end, the levels at which states are wanted, and step sizes. */
final class PathPlan {
  private static final int MOST_ITERATIONS = 20;
  private static final double AXIS = 1 - 1e-12;

  private final ShellProblem problem;
  private final Findings findings = new Findings();
  private final List<PathLevel> outputs = new ArrayList<>();
  private final PathLevel end;
  private final PathSettings settings;
  private final boolean everyState;
  private final boolean open;

  /** States at given displacements. */
  PathPlan(ShellProblem problem, SolvePlan.DisplacementSteps plan) throws BadInputException {
    this.problem = problem;
    plan.places().forEach(p -> outputs.add(level(p)));
    findings.stopIfErrors();
    end = outputs.get(outputs.size() - 1);
    settings = settings(plan.arc(), plan.limits(), PathSettings.USUAL.mostSteps());
    everyState = false;
    open = false;
  }

  /** Every state on the way to an end. */
  PathPlan(ShellProblem problem, SolvePlan.Path plan) throws BadInputException {
    this.problem = problem;
    open = Double.isNaN(plan.lastFactor()) && plan.until().isEmpty();
    end =
        plan.until()
            .map(this::level)
            .orElse(PathLevel.load(open ? Double.MAX_VALUE : plan.lastFactor()));
    findings.stopIfErrors();
    settings = settings(plan.arc(), plan.limits(), plan.mostSteps());
    everyState = true;
  }

  private PathLevel level(SolvePlan.Control control) {
    int[] vertices = problem.sets().find(control.where()).vertices();
    int vertex = vertices.length == 0 ? 0 : vertices[0];
    problem.findings().forEach(findings::add);
    double[] d = problem.sets().unit(control.at() + "/direction", control.direction());
    for (int c = 0; c < 3; c++) {
      if (Math.abs(d[c]) > AXIS) {
        return level(control, vertex, c, d[c] * control.value_mm());
      }
    }
    findings.error(control.at() + "/direction", "a direction askew", "x, y or z, with a sign", "");
    return PathLevel.load(0);
  }

  private PathLevel level(SolvePlan.Control control, int vertex, int c, double moved) {
    int unknown = problem.directors().unknowns().vertex(vertex) + c;
    if (problem.supports().freeNumber(unknown) < 0) {
      findings.error(
          control.at(),
          "vertex " + vertex + " is held along " + "xyz".charAt(c),
          "a vertex that can move",
          "");
    }
    return PathLevel.coordinate(unknown, problem.mesh().position(vertex, c) + moved);
  }

  private PathSettings settings(SolvePlan.Arc arc, SolvePlan.Limits limits, int mostSteps) {
    NewtonSettings newton =
        NewtonSettings.USUAL
            .acceptingUnstable(true)
            .withResidualTolerance(limits.tolerance())
            .withIterations(Math.min(MOST_ITERATIONS, limits.mostIterations()));
    PathSettings usual = PathSettings.USUAL;
    double size = GeometricSelectors.size(problem.mesh());
    double largest = Double.isNaN(arc.largest_mm()) ? usual.largest() : arc.largest_mm() / size;
    double first = Double.isNaN(arc.first_mm()) ? usual.first() : arc.first_mm() / size;
    first = Math.min(first, largest);
    double smallest = Math.min(usual.smallest(), first);
    return new PathSettings(newton, first, smallest, largest, mostSteps);
  }

  PathLevel end() {
    return end;
  }

  List<PathLevel> outputs() {
    return outputs;
  }

  PathSettings settings() {
    return settings;
  }

  /** Whether every state is told, not only those at the outputs. */
  boolean everyState() {
    return everyState;
  }

  /** Whether the number of steps is the only end. */
  boolean open() {
    return open;
  }
}
