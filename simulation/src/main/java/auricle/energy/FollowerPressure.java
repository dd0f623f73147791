package auricle.energy;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.Arrays;

/**
 * A pressure p that stays normal to the surface, as the energy of the volume it sweeps:
 *
 * <pre>
 *   W = −λ p Σ_T (V_T(u) − V_T(rest)),   V_T = (x_0 − O) · ((x_1 − O) × (x_2 − O)) / 6
 * </pre>
 *
 * <p>Positive p pushes along the normal. V_T is the signed volume of the cone from O over the
 * triangle; each corner gets p A n / 3 from a closed surface.
 *
 * <p>A pressure on an open surface has an energy only if its rim cannot sweep volume by itself.
 * Each rim edge (a, b) adds a force along c = (x_a − O) × (x_b − O) to its ends, which is no part
 * of the pressure; it does nothing exactly if the ends cannot move along c. So the term is right
 * for a closed surface, for a rim that is held in all three directions, and for a rim that stays in
 * a plane through O (a symmetry plane); several planes if O lies on all of them. {@link
 * #firstLooseEdge} tells.
 *
 * <p>One contribution a triangle, stencil x, y, z of its corners.
 */
public final class FollowerPressure implements EnergyTerm {
  private final String name;
  private final Topology topology;
  private final int[] triangles;
  private final double[] origin;
  private final double[] rest;
  private final double pressure;
  private final int[][] stencils;
  private double loadFactor = 1;

  /**
   * @param name what it is called in messages
   * @param topology the mesh
   * @param triangles the triangles it acts on
   * @param rest unknowns at rest
   * @param pressure_mpa p at load factor 1
   * @param origin O, mm
   */
  public FollowerPressure(
      String name,
      Topology topology,
      int[] triangles,
      double[] rest,
      double pressure_mpa,
      double[] origin) {
    this.name = name;
    this.topology = topology;
    this.triangles = triangles.clone();
    this.rest = rest.clone();
    this.pressure = pressure_mpa;
    this.origin = origin.clone();
    this.stencils = new int[triangles.length][9];
    for (int i = 0; i < triangles.length; i++) {
      for (int k = 0; k < 9; k++) {
        stencils[i][k] = topology.unknowns().vertex(topology.vertex(triangles[i], k / 3)) + k % 3;
      }
    }
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
  }

  /**
   * The first edge on the rim of the loaded triangles whose ends could move along c at rest, so
   * that this energy would not be a pressure; -1 if there is none.
   *
   * @param fixed for every unknown, whether it is held
   */
  public int firstLooseEdge(boolean[] fixed) {
    boolean[] loaded = new boolean[topology.triangleCount()];
    for (int t : triangles) {
      loaded[t] = true;
    }
    for (int e = 0; e < topology.edgeCount(); e++) {
      boolean left = topology.leftTriangle(e) >= 0 && loaded[topology.leftTriangle(e)];
      boolean right = topology.rightTriangle(e) >= 0 && loaded[topology.rightTriangle(e)];
      if (left != right && loose(e, fixed)) {
        return e;
      }
    }
    return -1;
  }

  private boolean loose(int edge, boolean[] fixed) {
    int a = topology.unknowns().vertex(topology.edgeStart(edge));
    int b = topology.unknowns().vertex(topology.edgeEnd(edge));
    double[] xa = Vectors.subtract(Vectors.at(rest, a), origin);
    double[] xb = Vectors.subtract(Vectors.at(rest, b), origin);
    double[] c = Vectors.cross(xa, xb);
    double size = Vectors.norm(xa) * Vectors.norm(Vectors.subtract(xb, xa));
    for (int k = 0; k < 3; k++) {
      if (!(fixed[a + k] && fixed[b + k]) && Math.abs(c[k]) > 1e-9 * size) {
        return true;
      }
    }
    return false;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return triangles.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  private double[] corner(int i, int k, double[] u) {
    return Vectors.subtract(Vectors.at(u, stencils[i][3 * k]), origin);
  }

  private double volume(int i, double[] u) {
    return Vectors.dot(corner(i, 0, u), Vectors.cross(corner(i, 1, u), corner(i, 2, u))) / 6;
  }

  @Override
  public double value(int i, double[] u) {
    return -loadFactor * pressure * (volume(i, u) - volume(i, rest));
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    double scale = -loadFactor * pressure / 6;
    Arrays.fill(hessian, 0, 81, 0);
    for (int k = 0; k < 3; k++) {
      double[] next = corner(i, (k + 1) % 3, u);
      double[] third = corner(i, (k + 2) % 3, u);
      double[] product = Vectors.cross(next, third);
      for (int a = 0; a < 3; a++) {
        gradient[3 * k + a] = scale * product[a];
        // ∂(next × third)_a / ∂next_b = ε_abc third_c
        int b = (a + 1) % 3;
        int c = (a + 2) % 3;
        put(hessian, 3 * k + a, 3 * ((k + 1) % 3) + b, scale * third[c]);
        put(hessian, 3 * k + a, 3 * ((k + 1) % 3) + c, -scale * third[b]);
      }
    }
    return value(i, u);
  }

  private static void put(double[] hessian, int row, int column, double value) {
    hessian[row * 9 + column] = value;
    hessian[column * 9 + row] = value;
  }
}
