package auricle.energy;

import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/**
 * Forces that keep size and direction, W = −λ Σ_v F_v · (x_v − X_v).
 *
 * <p>Line, surface and body loads are brought to the vertices by the linear shape functions: each
 * end of an edge takes half, each corner of a triangle a third. Sizes are per length, area and
 * volume at rest. λ is the load factor, 1 unless set. One contribution a loaded vertex, ascending;
 * stencil x, y, z.
 */
public final class DeadLoad implements EnergyTerm {
  private final String name;
  private final double[] rest;
  private final int[][] stencils;
  private final double[][] forces;
  private double loadFactor = 1;

  /** Sums loads vertex by vertex. */
  public static final class Builder {
    private final Topology topology;
    private final double[] rest;
    private final Map<Integer, double[]> forces = new TreeMap<>();

    /**
     * @param topology the mesh
     * @param rest unknowns at rest
     */
    public Builder(Topology topology, double[] rest) {
      this.topology = topology;
      this.rest = rest.clone();
    }

    /** Adds a force on one vertex, N. */
    public Builder onVertex(int vertex, double[] force_n) {
      forces.merge(vertex, force_n.clone(), (a, b) -> Vectors.add(a, 1, b));
      return this;
    }

    /** Adds a force per rest length, N/mm, on edges. */
    public Builder onEdges(int[] edges, double[] force_n_per_mm) {
      for (int e : edges) {
        int a = topology.edgeStart(e);
        int b = topology.edgeEnd(e);
        double half = Vectors.norm(Vectors.subtract(at(b), at(a))) / 2;
        onVertex(a, Vectors.scale(half, force_n_per_mm));
        onVertex(b, Vectors.scale(half, force_n_per_mm));
      }
      return this;
    }

    /** Adds a force per rest area, N/mm², on triangles. */
    public Builder onTriangles(int[] triangles, double[] force_n_per_mm2) {
      for (int t : triangles) {
        double[] a = at(topology.vertex(t, 0));
        double area =
            new PlateFrame(a, at(topology.vertex(t, 1)), at(topology.vertex(t, 2))).area();
        for (int i = 0; i < 3; i++) {
          onVertex(topology.vertex(t, i), Vectors.scale(area / 3, force_n_per_mm2));
        }
      }
      return this;
    }

    /** Adds a force per rest volume, N/mm³, such as weight, on triangles of the given thickness. */
    public Builder onVolume(int[] triangles, double thickness_mm, double[] force_n_per_mm3) {
      return onTriangles(triangles, Vectors.scale(thickness_mm, force_n_per_mm3));
    }

    /** The load. */
    public DeadLoad build(String name) {
      return new DeadLoad(name, rest, forces);
    }

    private double[] at(int vertex) {
      return Vectors.at(rest, topology.unknowns().vertex(vertex));
    }
  }

  private DeadLoad(String name, double[] rest, Map<Integer, double[]> forces) {
    this.name = name;
    this.rest = rest;
    this.stencils =
        forces.keySet().stream().map(v -> new VertexPoint(v).unknowns()).toArray(int[][]::new);
    this.forces = forces.values().toArray(double[][]::new);
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    this.loadFactor = loadFactor;
  }

  /** Sum of all forces at the present load factor, N. */
  public double[] resultant() {
    double[] sum = new double[3];
    for (double[] force : forces) {
      sum = Vectors.add(sum, loadFactor, force);
    }
    return sum;
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
    int at = stencils[i][0];
    double[] moved = Vectors.subtract(Vectors.at(u, at), Vectors.at(rest, at));
    return -loadFactor * Vectors.dot(forces[i], moved);
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    for (int a = 0; a < 3; a++) {
      gradient[a] = -loadFactor * forces[i][a];
    }
    Arrays.fill(hessian, 0, 9, 0);
    return value(i, u);
  }
}
