package auricle.energy;

import auricle.geometry.Vectors;
import java.util.List;

/**
 * A force F that keeps size and direction and acts on a point anywhere on the shell, also off its
 * mid-surface: W = −λ F · (p(u) − P), with P where the point was at rest. One contribution; stencil
 * the point's unknowns, ascending.
 */
public final class PointForce implements EnergyTerm {
  private final String name;
  private final MaterialPoint point;
  private final PointStencil stencil;
  private final double[] origin;
  private final double[] force;
  private double loadFactor = 1;

  /**
   * @param name what it is called in messages
   * @param point where it acts
   * @param rest unknowns at rest
   * @param force_n F at load factor 1
   */
  public PointForce(String name, MaterialPoint point, double[] rest, double[] force_n) {
    this.name = name;
    this.point = point;
    this.stencil = new PointStencil(List.of(point));
    this.origin = point.position(rest);
    this.force = force_n.clone();
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return 1;
  }

  @Override
  public int[] stencil(int i) {
    return stencil.stencil();
  }

  @Override
  public double value(int i, double[] u) {
    return -loadFactor * Vectors.dot(force, Vectors.subtract(point.position(u), origin));
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    stencil.pullBack(u, Vectors.scale(-loadFactor, force), new double[9], gradient, hessian);
    return value(i, u);
  }
}
