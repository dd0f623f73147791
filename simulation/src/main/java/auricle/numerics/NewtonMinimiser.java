package auricle.numerics;

/**
 * Newton's method with exact derivatives for minima of a {@link SmoothFunction}, made to find one
 * from far away.
 *
 * <ul>
 *   <li><b>Direction.</b> d = −(K + s·diag|K|)⁻¹ g, with s = 0 wherever K is positive definite
 *       (known from the signs of the pivots of LDLᵀ), else just large enough.
 *   <li><b>Watchdog.</b> In a thin shell a finite rotation looks like a huge stretch, so the value
 *       rises after a good step and the next step mends it. Full steps are therefore taken on
 *       trial; if within a few of them the value comes below that of the last checkpoint, the point
 *       becomes the new checkpoint, otherwise the iteration returns to the checkpoint and shortens
 *       the step until the value falls (Chamberlain, Powell, Lemaréchal and Pedersen 1982, Math.
 *       Programming Study 16:1-17). From checkpoint to checkpoint the value never rises by more
 *       than its rounding error.
 *   <li><b>Saddles.</b> A stationary point with negative curvature is left along its most negative
 *       mode, the same way in every run.
 *   <li><b>End.</b> Converged means: largest residual below tolerance × largest force before
 *       cancellation (or, where that cannot be reached, below the rounding error 32 ulp · |K||x| of
 *       the residual itself, with the tolerance in the result saying so), <em>and</em> a Newton
 *       step shorter than its tolerance, <em>and</em> a positive definite K whose weakest mode
 *       stands above rounding. Infinite or undefined values are rejected steps.
 * </ul>
 *
 * <p>Not safe for use by several threads at a time.
 */
public final class NewtonMinimiser {
  private final Linearisation point;

  /**
   * @param function what to minimise
   */
  public NewtonMinimiser(SmoothFunction function) {
    point = new Linearisation(function);
  }

  /**
   * Moves x to a minimum.
   *
   * @param x start, length n; overwritten by the last checkpoint, at which the state of the
   *     function is left too
   */
  public NewtonResult minimise(double[] x, NewtonSettings settings, NewtonMonitor monitor) {
    return new NewtonRun(point, x, settings, monitor).run();
  }

  /**
   * The function at the point evaluated last: after a converged minimisation the solution, with the
   * factor of its Hessian.
   */
  public Linearisation point() {
    return point;
  }
}
