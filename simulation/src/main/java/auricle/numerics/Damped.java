package auricle.numerics;

import java.util.Arrays;

/**
 * A function with a drag that holds its unknowns where they were: f(x) + ½ c Σ (unit_i (x_i −
 * a_i))². Its minimum is where a body with the energy f is after one implicit step in time of a
 * motion through something viscous: c is the viscosity over the length of the step.
 *
 * <p>Where the function rewrites its unknowns, the place a is rewritten by as much, so that the
 * drag stays as it is.
 */
final class Damped implements SmoothFunction {
  private final SmoothFunction function;
  private final double[] anchor;
  private final double[] before;
  private double drag;

  /** Without drag until {@link #hold}. */
  Damped(SmoothFunction function) {
    this.function = function;
    anchor = new double[function.size()];
    before = new double[function.size()];
  }

  /**
   * Holds the unknowns at a place.
   *
   * @param c stiffness for every unknown that is a length; ≥ 0
   */
  void hold(double[] place, double c) {
    System.arraycopy(place, 0, anchor, 0, anchor.length);
    drag = c;
  }

  private double weight(int i) {
    return drag * unit(i) * unit(i);
  }

  private double dragged(double[] x) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      sum += weight(i) * (x[i] - anchor[i]) * (x[i] - anchor[i]);
    }
    return 0.5 * sum;
  }

  private double pull(double[] x, double[] gradient) {
    for (int i = 0; i < x.length; i++) {
      gradient[i] += weight(i) * (x[i] - anchor[i]);
    }
    return dragged(x);
  }

  @Override
  public int size() {
    return function.size();
  }

  @Override
  public SymmetricPattern pattern() {
    return function.pattern();
  }

  @Override
  public double value(double[] x) {
    return function.value(x) + dragged(x);
  }

  @Override
  public double derivatives(double[] x, double[] gradient, SymmetricMatrix hessian) {
    double value = function.derivatives(x, gradient, hessian);
    for (int i = 0; i < x.length; i++) {
      hessian.addToDiagonal(i, weight(i));
    }
    return value + pull(x, gradient);
  }

  @Override
  public double gradient(double[] x, double[] gradient) {
    double value = function.gradient(x, gradient);
    return value + pull(x, gradient);
  }

  @Override
  public double largestStep(double[] x, double[] direction) {
    return function.largestStep(x, direction);
  }

  @Override
  public void settle(double[] x) {
    System.arraycopy(x, 0, before, 0, x.length);
    function.settle(x);
    for (int i = 0; i < x.length; i++) {
      anchor[i] += x[i] - before[i];
    }
  }

  @Override
  public boolean exact() {
    return function.exact();
  }

  /** The place that holds, then the state of the function. */
  @Override
  public double[] save() {
    double[] inner = function.save();
    double[] all = Arrays.copyOf(anchor, anchor.length + inner.length);
    System.arraycopy(inner, 0, all, anchor.length, inner.length);
    return all;
  }

  @Override
  public void restore(double[] saved) {
    System.arraycopy(saved, 0, anchor, 0, anchor.length);
    function.restore(Arrays.copyOfRange(saved, anchor.length, saved.length));
  }

  @Override
  public double unit(int i) {
    return function.unit(i);
  }

  @Override
  public double extent() {
    return function.extent();
  }

  @Override
  public double forceScale() {
    return function.forceScale();
  }

  @Override
  public double valueRoundOff() {
    return function.valueRoundOff();
  }

  @Override
  public String describe(int i) {
    return function.describe(i);
  }
}
