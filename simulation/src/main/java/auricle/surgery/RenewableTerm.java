package auricle.surgery;

import auricle.energy.EnergyTerm;
import java.util.Arrays;
import java.util.List;

/**
 * A term that can be exchanged for another between solutions, so that the body stays one sum of
 * terms with one sparse pattern. The pattern is built anew only if the new term couples other
 * unknowns.
 */
final class RenewableTerm implements EnergyTerm {
  private final String name;
  private EnergyTerm term;
  private int version;
  private double loadFactor = 1;

  RenewableTerm(EnergyTerm first) {
    name = first.name();
    term = first;
  }

  /** Puts another in its place. */
  void renew(EnergyTerm other) {
    boolean same = other.count() == term.count();
    for (int i = 0; same && i < other.count(); i++) {
      same = Arrays.equals(other.stencil(i), term.stencil(i));
    }
    term = other;
    term.setLoadFactor(loadFactor);
    version += same ? 0 : 1;
  }

  @Override
  public String name() {
    return name;
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
    return term.value(i, u);
  }

  @Override
  public double gradient(int i, double[] u, double[] gradient) {
    return term.gradient(i, u, gradient);
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    return term.derivatives(i, u, gradient, hessian);
  }

  @Override
  public double largestStep(double[] u, double[] direction) {
    return term.largestStep(u, direction);
  }

  @Override
  public int stencilVersion() {
    return version + term.stencilVersion();
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

  @Override
  public void setLoadFactor(double factor) {
    loadFactor = factor;
    term.setLoadFactor(factor);
  }

  @Override
  public boolean countsFromFrames() {
    return term.countsFromFrames();
  }
}
