package auricle.analysis;

import java.util.List;

/** How the equilibrium is followed. */
public sealed interface SolvePlan {
  /** Place in the model file. */
  String at();

  /** One linear solution at the full load. */
  record Linear(String at) implements SolvePlan {}

  /**
   * Large displacements at given load factors, in the order given.
   *
   * @param factors load factors, at least one
   * @param limits when to stop iterating
   */
  record LoadSteps(String at, List<Double> factors, Limits limits) implements SolvePlan {}

  /**
   * Large displacements along the equilibrium path by arc length, past limit points, until one of
   * the ends is reached.
   *
   * @param firstFactor load factor of the first step
   * @param lastFactor end: a load factor, or NaN
   * @param probe name of a displacement probe whose value ends the path, or empty
   * @param probeEnd that value
   * @param mostSteps end: number of steps
   * @param largestFactorStep bound on the change of the load factor in a step, or NaN
   */
  record Path(
      String at,
      double firstFactor,
      double lastFactor,
      String probe,
      double probeEnd,
      int mostSteps,
      double largestFactorStep,
      Limits limits)
      implements SolvePlan {}

  /**
   * Large displacements at given displacements of one place; the load factor follows.
   *
   * @param where the place; the mean of its vertices is controlled
   * @param direction any length
   * @param values_mm displacements in order
   */
  record DisplacementSteps(
      String at, Selector where, Triple direction, List<Double> values_mm, Limits limits)
      implements SolvePlan {}

  /**
   * When to stop iterating.
   *
   * @param tolerance relative residual
   * @param mostIterations per step
   */
  record Limits(double tolerance, int mostIterations) {}
}
