package auricle.energy;

import java.util.Arrays;
import java.util.List;

/**
 * A term times a factor that may change between solutions: W = f(λ) · W₁, f going linearly with the
 * load factor λ from one value to another. What fades, grows or relaxes as a whole.
 */
public final class ScaledTerm implements EnergyTerm {
  private final EnergyTerm term;
  private final double[] factors = {1, 1};
  private double factor = 1;

  /**
   * @param term what is scaled; factor 1 until told otherwise
   */
  public ScaledTerm(EnergyTerm term) {
    this.term = term;
  }

  /**
   * Sets the factor. It takes effect when the load factor is set next.
   *
   * @param atStart at load factor 0
   * @param atEnd at load factor 1
   * @throws IllegalArgumentException if one of them is negative or not finite
   */
  public void scale(double atStart, double atEnd) {
    if (!(atStart >= 0 && atEnd >= 0 && atStart + atEnd < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "%s: factors %s and %s must not be negative".formatted(name(), atStart, atEnd));
    }
    factors[0] = atStart;
    factors[1] = atEnd;
  }

  @Override
  public String name() {
    return term.name();
  }

  @Override
  public int count() {
    return term.count();
  }

  @Override
  public int[] stencil(int i) {
    return term.stencil(i);
  }

  @Override
  public double value(int i, double[] u) {
    return factor == 0 ? 0 : factor * term.value(i, u);
  }

  @Override
  public double gradient(int i, double[] u, double[] gradient) {
    if (factor == 0) {
      Arrays.fill(gradient, 0, stencil(i).length, 0);
      return 0;
    }
    double value = term.gradient(i, u, gradient);
    for (int k = 0; k < stencil(i).length; k++) {
      gradient[k] *= factor;
    }
    return factor * value;
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    int n = term.stencil(i).length;
    if (factor == 0) {
      Arrays.fill(gradient, 0, n, 0);
      Arrays.fill(hessian, 0, n * n, 0);
      return 0;
    }
    double value = term.derivatives(i, u, gradient, hessian);
    for (int k = 0; k < n; k++) {
      gradient[k] *= factor;
    }
    for (int k = 0; k < n * n; k++) {
      hessian[k] *= factor;
    }
    return factor * value;
  }

  @Override
  public double largestStep(double[] u, double[] direction) {
    return term.largestStep(u, direction);
  }

  @Override
  public int stencilVersion() {
    return term.stencilVersion();
  }

  @Override
  public boolean curved(int i, double[] u) {
    return term.curved(i, u);
  }

  @Override
  public List<int[]> prospects() {
    return term.prospects();
  }

  @Override
  public void foresee(int i, double[] from, double[] to) {
    term.foresee(i, from, to);
  }

  @Override
  public void update(double[] u) {
    term.update(u);
  }

  /** A predictor may look a little below no factor at all. */
  @Override
  public void setLoadFactor(double loadFactor) {
    factor = Math.max(0, factors[0] + loadFactor * (factors[1] - factors[0]));
    term.setLoadFactor(loadFactor);
  }

  @Override
  public boolean countsFromFrames() {
    return term.countsFromFrames();
  }
}
