package auricle.numerics;

import org.jspecify.annotations.Nullable;

/**
 * A function at one point: value, gradient g, Hessian K and its factor. Memory and the symbolic
 * factorisation are kept from point to point as long as the pattern stays the same.
 */
public final class Linearisation {
  private final SmoothFunction function;
  private final double[] gradient;
  private @Nullable ShiftedFactor factor;
  private @Nullable SymbolicFactor known;
  private @Nullable Balance balance;
  private double value;
  private boolean kept;
  private boolean rough;

  /** No point yet. */
  public Linearisation(SmoothFunction function) {
    this.function = function;
    gradient = new double[function.size()];
  }

  /** Takes over what another knows of its pattern, which may be that of this function too. */
  public void learnFrom(Linearisation other) {
    known = other.known;
  }

  /** The function. */
  public SmoothFunction function() {
    return function;
  }

  /**
   * Settles the function at x (which may be rewritten) and evaluates value, gradient and Hessian.
   *
   * @return whether value and gradient are finite
   */
  public boolean evaluate(double[] x) {
    function.settle(x);
    ShiftedFactor current = factor;
    if (current == null || current.matrix().pattern() != function.pattern()) {
      current = new ShiftedFactor(function.pattern(), known);
      factor = current;
      known = current.symbolic();
    }
    rough = kept;
    kept = false;
    value = function.derivatives(x, gradient, current.matrix());
    balance = new Balance(function, gradient);
    return Double.isFinite(value) && Dense.finite(gradient);
  }

  /**
   * Settles the function at an x next to the last and evaluates value and gradient; Hessian and
   * factor stay those that there are. Where there are none that serve, {@link #evaluate}.
   *
   * @return whether value and gradient are finite
   */
  public boolean evaluateNearby(double[] x) {
    ShiftedFactor current = factor;
    if (current == null || !current.plain()) {
      return evaluate(x);
    }
    function.settle(x);
    if (current.matrix().pattern() != function.pattern()) {
      return evaluate(x);
    }
    kept = true;
    rough = true;
    value = function.gradient(x, gradient);
    balance = new Balance(function, gradient);
    return Double.isFinite(value) && Dense.finite(gradient);
  }

  /** Whether Hessian and factor are those of an earlier point nearby. */
  public boolean kept() {
    return kept;
  }

  /** Whether an old factor serves here, or led here. */
  boolean rough() {
    return rough;
  }

  /**
   * Factorises the Hessian, shifted until it is positive definite unless indefinite ones are
   * allowed.
   */
  public void factorize(boolean allowIndefinite) {
    factor().factorize(allowIndefinite);
  }

  /** Whether the last factorisation can be solved with. */
  public boolean usable() {
    return factor().usable();
  }

  /** Negative eigenvalues of K itself at the last factorisation; -1 if it broke down. */
  public int negativePivots() {
    return factor().negativePivots();
  }

  /**
   * Solves with the last factor.
   *
   * @param b right-hand side, length n
   * @param out solution, length n; may be b
   */
  public void solve(double[] b, double[] out) {
    factor().solve(b, out);
  }

  /** Value at the point. */
  public double value() {
    return value;
  }

  /** Gradient at the point, length n; shared, overwritten by the next evaluation. */
  public double[] gradient() {
    return gradient;
  }

  /** Largest |g_i| / unit_i. */
  public double residual() {
    return balance().residual();
  }

  /** The residual that a relative tolerance allows here. */
  public double allowed(double relativeTolerance) {
    return balance().tolerance(relativeTolerance);
  }

  /**
   * The residual that rounding of x alone can leave here: where less was allowed, a point from
   * which the Newton step is next to nothing is as good as can be had.
   */
  public double roundOff(double[] x) {
    return balance().floor(factor().matrix(), x);
  }

  /** "largest residual … at …, tolerance …". */
  public String words(double tolerance) {
    return balance().words(tolerance);
  }

  Balance balance() {
    if (balance == null) {
      throw new IllegalStateException("nothing evaluated yet");
    }
    return balance;
  }

  ShiftedFactor factor() {
    if (factor == null) {
      throw new IllegalStateException("nothing evaluated yet");
    }
    return factor;
  }
}
