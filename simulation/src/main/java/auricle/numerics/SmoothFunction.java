package auricle.numerics;

/**
 * A function of n unknowns to be minimised, twice differentiable by pieces, with a sparse Hessian.
 *
 * <p>Unknowns may have different units. {@link #unit} brings them to one (a length): steps are
 * measured as |δx_i| unit_i, gradient entries as |g_i| / unit_i (a force when the value is an
 * energy).
 *
 * <p>The function may carry state that moves with the iteration (frames that follow the unknowns,
 * lists of contact partners). It changes in {@link #settle} alone, never within an evaluation.
 */
public interface SmoothFunction {
  /** Number of unknowns n. */
  int size();

  /**
   * Where the Hessian has entries. The same object is given back as long as the pattern is the
   * same; it may change in {@link #settle} alone.
   */
  SymmetricPattern pattern();

  /** Value at x; infinite or NaN outside the domain. */
  double value(double[] x);

  /**
   * Value with derivatives.
   *
   * @param gradient filled, length n
   * @param hessian on {@link #pattern()}; overwritten
   * @return the value
   */
  double derivatives(double[] x, double[] gradient, SymmetricMatrix hessian);

  /** Value with the gradient alone. */
  default double gradient(double[] x, double[] gradient) {
    return derivatives(x, gradient, new SymmetricMatrix(pattern()));
  }

  /** Largest t ≥ 0 for which x + t·direction stays in the domain; infinite if there is no limit. */
  default double largestStep(double[] x, double[] direction) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Called between iterations: moves the state of the function along to x and may rewrite x in
   * place so that it means the same in the new state.
   */
  default void settle(double[] x) {}

  /**
   * Whether the Hessian evaluated last is exact, to what stability needs; where it is not, it
   * becomes so when the same point is settled and evaluated again.
   */
  default boolean exact() {
    return true;
  }

  /** A copy of the state, to be given back to {@link #restore} together with its x. */
  default double[] save() {
    return new double[0];
  }

  /** Takes back a state got from {@link #save}. */
  default void restore(double[] saved) {}

  /** Length that a change of unknown i by 1 stands for, &gt; 0. */
  default double unit(int i) {
    return 1;
  }

  /** Size of the whole, as a length: steps far below it are nothing, far above it an escape. */
  double extent();

  /**
   * The largest force there is before forces cancel, at the last {@link #derivatives}: at a
   * solution the gradient is small against this.
   */
  double forceScale();

  /** Estimated rounding error of the value at the last {@link #derivatives}. */
  double valueRoundOff();

  /** What unknown i is, for messages: "y of vertex 12". */
  default String describe(int i) {
    return "unknown " + i;
  }
}
