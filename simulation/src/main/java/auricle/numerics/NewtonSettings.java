package auricle.numerics;

/**
 * When a minimisation ends.
 *
 * @param residualTolerance largest residual at a solution, as a fraction of {@link
 *     SmoothFunction#forceScale()}
 * @param stepTolerance largest Newton step at a solution, as a fraction of {@link
 *     SmoothFunction#extent()}: guards soft directions, in which a small force means a large error
 * @param mostIterations iterations after which the solution counts as stalled
 * @param relaxedSteps how many steps in a row may leave the value above the last checkpoint
 * @param factorReach how far from where it was made a factor may be used again, as a fraction of
 *     the extent; 0: never. Only for bodies whose stiffest direction is not many orders of
 *     magnitude stiffer than their softest: turned by θ, a ratio r of stiffnesses makes the old
 *     factor too stiff by r θ² in the soft direction, and what it says of the step that is left too
 *     short
 * @param acceptUnstable whether a stationary point that is no minimum counts as a solution
 * @param passing whether the solution is but a place on the way: then the Hessian there need not be
 *     exact either
 */
public record NewtonSettings(
    double residualTolerance,
    double stepTolerance,
    int mostIterations,
    int relaxedSteps,
    double factorReach,
    boolean acceptUnstable,
    boolean passing) {
  /**
   * Tolerances 1e-8 and 1e-6, 200 iterations, 6 relaxed steps, a factor for every step, minima
   * only.
   */
  public static final NewtonSettings USUAL =
      new NewtonSettings(1e-8, 1e-6, 200, 6, 0, false, false);

  private static final double PASSING_RESIDUAL = 0.1;
  private static final double PASSING_STEP = 0.02;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public NewtonSettings {
    if (!(residualTolerance > 0 && stepTolerance > 0 && mostIterations >= 0 && relaxedSteps >= 0)
        || !(factorReach >= 0)) {
      throw new IllegalArgumentException(
          "tolerances %s, %s, iterations %d, relaxed steps %d; expected positive tolerances and counts"
              .formatted(residualTolerance, stepTolerance, mostIterations, relaxedSteps));
    }
  }

  /** The same, with stationary points of any kind as solutions or not. */
  public NewtonSettings acceptingUnstable(boolean accept) {
    return new NewtonSettings(
        residualTolerance,
        stepTolerance,
        mostIterations,
        relaxedSteps,
        factorReach,
        accept,
        passing);
  }

  /** The same with another limit of iterations. */
  public NewtonSettings withIterations(int most) {
    return new NewtonSettings(
        residualTolerance, stepTolerance, most, relaxedSteps, factorReach, acceptUnstable, passing);
  }

  /** The same with another residual tolerance. */
  public NewtonSettings withResidualTolerance(double tolerance) {
    return new NewtonSettings(
        tolerance,
        stepTolerance,
        mostIterations,
        relaxedSteps,
        factorReach,
        acceptUnstable,
        passing);
  }

  /**
   * The same for a place on the way from one solution to the next: a residual below a tenth of the
   * largest force, and the next step shorter than a fiftieth of the extent.
   */
  public NewtonSettings forPassing() {
    return new NewtonSettings(
        PASSING_RESIDUAL,
        PASSING_STEP,
        mostIterations,
        relaxedSteps,
        factorReach,
        acceptUnstable,
        true);
  }

  /** The same with another reach of factors. */
  public NewtonSettings withFactorReach(double fraction) {
    return new NewtonSettings(
        residualTolerance,
        stepTolerance,
        mostIterations,
        relaxedSteps,
        fraction,
        acceptUnstable,
        passing);
  }
}
