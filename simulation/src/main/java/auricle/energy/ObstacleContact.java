package auricle.energy;

import auricle.geometry.Vectors;
import java.util.Arrays;

/**
 * Vertices that a rigid body keeps out, without friction.
 *
 * <pre>
 *   W = Σ_v A_v w(d(x_v) − h_v)
 * </pre>
 *
 * <p>d is the distance from the {@link Obstacle}, h_v the distance that the vertex itself stands
 * for (half a thickness), A_v its share of the area, w the {@link BarrierLaw}. One contribution a
 * vertex, stencil x, y, z. Where the gap is not positive the energy is infinite and derivatives are
 * NaN: {@link #firstViolation} finds such a start beforehand. Only vertices are tested, so an
 * obstacle much smaller than a triangle may pass between them.
 */
public final class ObstacleContact implements EnergyTerm {
  /** Share of the present gap that a step leaves open. */
  private static final double LEFT_OPEN = 0.1;

  private static final int MOST_ITERATIONS = 50;

  private final String name;
  private final Obstacle obstacle;
  private final BarrierLaw law;
  private final int[][] stencils;
  private final double[] areas;
  private final double[] offsets;

  /**
   * @param name what it is called in messages
   * @param obstacle the body
   * @param law the contact law
   * @param vertices which vertices it keeps out
   * @param areas_mm2 area of each of them
   * @param offsets_mm distance from the body at which each of them touches, ≥ 0
   * @throws IllegalArgumentException if the arrays differ in length or hold a negative number or
   *     NaN
   */
  public ObstacleContact(
      String name,
      Obstacle obstacle,
      BarrierLaw law,
      int[] vertices,
      double[] areas_mm2,
      double[] offsets_mm) {
    if (areas_mm2.length != vertices.length
        || offsets_mm.length != vertices.length
        || !Arrays.stream(areas_mm2).allMatch(a -> a >= 0)
        || !Arrays.stream(offsets_mm).allMatch(h -> h >= 0)) {
      throw new IllegalArgumentException(
          name + ": expected one area and one offset a vertex, none negative");
    }
    this.name = name;
    this.obstacle = obstacle;
    this.law = law;
    this.areas = areas_mm2.clone();
    this.offsets = offsets_mm.clone();
    this.stencils =
        Arrays.stream(vertices).mapToObj(v -> new VertexPoint(v).unknowns()).toArray(int[][]::new);
  }

  /** Gap of contribution i, mm: distance less offset. */
  public double gap(int i, double[] u) {
    return obstacle.distance(Vectors.at(u, stencils[i][0])) - offsets[i];
  }

  /** Contact force on contribution i, N, not negative. */
  public double force(int i, double[] u) {
    return areas[i] * law.pressure(gap(i, u));
  }

  /** The first contribution whose gap is not positive, or -1. */
  public int firstViolation(double[] u) {
    for (int i = 0; i < count(); i++) {
      if (!(gap(i, u) > 0)) {
        return i;
      }
    }
    return -1;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return stencils.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  @Override
  public double value(int i, double[] u) {
    return areas[i] * law.energy(gap(i, u));
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    double gap = gap(i, u);
    if (gap >= law.activation_mm()) {
      Arrays.fill(gradient, 0, 3, 0);
      Arrays.fill(hessian, 0, 9, 0);
      return 0;
    }
    obstacle.derivatives(Vectors.at(u, stencils[i][0]), gradient, hessian);
    double force = areas[i] * law.pressure(gap);
    double stiffness = areas[i] * law.stiffness(gap);
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        hessian[3 * a + b] = stiffness * gradient[a] * gradient[b] - force * hessian[3 * a + b];
      }
    }
    for (int a = 0; a < 3; a++) {
      gradient[a] *= -force;
    }
    return areas[i] * law.energy(gap);
  }

  /** A step that leaves at least a tenth of every present gap open. */
  @Override
  public double largestStep(double[] u, double[] direction) {
    double largest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      largest = Math.min(largest, largestStep(i, u, direction));
    }
    return largest;
  }

  private double largestStep(int i, double[] u, double[] direction) {
    double[] x = Vectors.at(u, stencils[i][0]);
    double[] v = Vectors.at(direction, stencils[i][0]);
    double now = gap(i, u);
    if (!(now > 0)) {
      return 0;
    }
    if (Vectors.norm(v) < (1 - LEFT_OPEN) * now) {
      return Double.POSITIVE_INFINITY;
    }
    double[] gradient = new double[3];
    double[] hessian = new double[9];
    double t = 0;
    for (int k = 0; k < MOST_ITERATIONS; k++) {
      double ahead =
          obstacle.derivatives(Vectors.add(x, t, v), gradient, hessian)
              - offsets[i]
              - LEFT_OPEN * now;
      double closing = -Vectors.dot(gradient, v);
      if (closing <= 0) {
        return Double.POSITIVE_INFINITY;
      }
      double advance = ahead / closing;
      if (advance <= 1e-6 * t) {
        break;
      }
      t += advance;
    }
    return t;
  }
}
