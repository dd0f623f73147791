package auricle.analysis;

import auricle.diagnostics.BadInputException;
import java.util.List;
import java.util.Optional;

/** How the equilibrium is followed. */
public sealed interface SolvePlan {
  /** Place in the model file. */
  String at();

  /** Large displacements, state by state. */
  sealed interface Followed extends SolvePlan {
    /**
     * Follows the equilibrium as planned.
     *
     * @throws BadInputException if that cannot be done on this mesh
     */
    StepRun.Ending follow(StepRun run) throws BadInputException;
  }

  /** One linear solution at the full load. */
  record Linear(String at) implements SolvePlan {}

  /**
   * Large displacements at given load factors, in the order given.
   *
   * @param factors load factors, at least one
   * @param acceptUnstable whether an equilibrium that is not stable counts as found
   * @param limits when to stop iterating
   */
  record LoadSteps(String at, List<Double> factors, boolean acceptUnstable, Limits limits)
      implements Followed {
    @Override
    public StepRun.Ending follow(StepRun run) {
      return run.loadSteps(this);
    }
  }

  /**
   * Large displacements along the equilibrium path by arc length, past limit points; every state is
   * told.
   *
   * @param lastFactor end: a load factor, or NaN
   * @param until end: a displacement, or nothing
   * @param mostSteps at most so many steps; the end, if there is no other
   * @param arc size of steps
   */
  record Path(
      String at, double lastFactor, Optional<Control> until, int mostSteps, Arc arc, Limits limits)
      implements Followed {
    @Override
    public StepRun.Ending follow(StepRun run) throws BadInputException {
      return run.path(this);
    }
  }

  /**
   * Large displacements at given displacements of one vertex; the load factor follows.
   *
   * @param places where the vertex shall come, in order
   */
  record DisplacementSteps(String at, List<Control> places, Arc arc, Limits limits)
      implements Followed {
    @Override
    public StepRun.Ending follow(StepRun run) throws BadInputException {
      return run.path(this);
    }
  }

  /**
   * A displacement of a vertex.
   *
   * @param where the vertex; of several, that of lowest number
   * @param direction along x, y or z
   * @param value_mm displacement along it
   */
  record Control(String at, Selector where, Triple direction, double value_mm) {}

  /**
   * Steps along a path, as the largest motion of a vertex expected.
   *
   * @param first_mm first step; NaN for the usual
   * @param largest_mm largest step; NaN for the usual
   */
  record Arc(double first_mm, double largest_mm) {}

  /**
   * When to stop iterating.
   *
   * @param tolerance relative residual
   * @param mostIterations per step; along a path, no more than 20 are tried
   */
  record Limits(double tolerance, int mostIterations) {}
}
