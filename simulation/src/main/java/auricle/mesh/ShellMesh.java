package auricle.mesh;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A triangulated mid-surface: vertex positions, unit surface normals at the vertices, topology, and
 * named sets of vertices and triangles (regions). Immutable.
 */
public final class ShellMesh {
  private final double[] positions;
  private final double[] normals;
  private final Topology topology;
  private final Map<String, List<Integer>> vertexSets;
  private final Map<String, List<Integer>> regions;

  private ShellMesh(Builder b) {
    this.positions = b.positions.clone();
    this.normals = b.normals.clone();
    this.topology = b.topology;
    this.vertexSets = Collections.unmodifiableMap(new TreeMap<>(b.vertexSets));
    this.regions = Collections.unmodifiableMap(new TreeMap<>(b.regions));
  }

  /**
   * Starts a mesh.
   *
   * @param positions x, y, z of each vertex, mm
   * @param normals surface normal at each vertex, three numbers each
   * @param topology triangles, anticlockwise seen against the normals
   */
  public static Builder builder(double[] positions, double[] normals, Topology topology) {
    return new Builder(positions, normals, topology);
  }

  /** Number of vertices. */
  public int vertexCount() {
    return positions.length / 3;
  }

  /** Coordinate c (0, 1, 2) of a vertex, mm. */
  public double position(int vertex, int c) {
    return positions[3 * vertex + c];
  }

  /** A copy of all coordinates, three a vertex, mm. */
  public double[] positions() {
    return positions.clone();
  }

  /** A copy of all normals, three numbers a vertex. */
  public double[] normals() {
    return normals.clone();
  }

  /** Triangles and edges. */
  public Topology topology() {
    return topology;
  }

  /** Mean length of an edge, mm: what a tilt of one radian moves. */
  public double meanEdge() {
    double sum = 0;
    for (int e = 0; e < topology.edgeCount(); e++) {
      double square = 0;
      for (int c = 0; c < 3; c++) {
        double d = position(topology.edgeEnd(e), c) - position(topology.edgeStart(e), c);
        square += d * d;
      }
      sum += Math.sqrt(square);
    }
    return sum / topology.edgeCount();
  }

  /** Named vertex sets, ascending. */
  public Map<String, List<Integer>> vertexSets() {
    return vertexSets;
  }

  /** Named sets of triangles, ascending. */
  public Map<String, List<Integer>> regions() {
    return regions;
  }

  /** A vertex set by name. */
  public Optional<List<Integer>> vertexSet(String name) {
    return Optional.ofNullable(vertexSets.get(name));
  }

  /** The same mesh with all coordinates multiplied by a factor above 0. */
  public ShellMesh scaled(double factor) {
    double[] x = java.util.Arrays.stream(positions).map(p -> factor * p).toArray();
    Builder scaled = builder(x, normals, topology);
    vertexSets.forEach(scaled::vertexSet);
    regions.forEach(scaled::region);
    return scaled.build();
  }

  /** Unknowns of the undeformed shell: the positions, with all tilts zero. */
  public double[] unknowns() {
    double[] u = new double[topology.unknowns().size()];
    System.arraycopy(positions, 0, u, 0, positions.length);
    return u;
  }

  /** New directors along the normals. */
  public Directors directors() {
    return new Directors(topology.unknowns(), normals);
  }

  /** Gathers a mesh. */
  public static final class Builder {
    private final double[] positions;
    private final double[] normals;
    private final Topology topology;
    private final Map<String, List<Integer>> vertexSets = new TreeMap<>();
    private final Map<String, List<Integer>> regions = new TreeMap<>();

    private Builder(double[] positions, double[] normals, Topology topology) {
      if (positions.length != 3 * topology.vertexCount() || normals.length != positions.length) {
        throw new IllegalArgumentException("three coordinates and a normal are needed a vertex");
      }
      this.positions = positions;
      this.normals = normals;
      this.topology = topology;
    }

    /** Adds a set of vertices; order and repetition do not matter. */
    public Builder vertexSet(String name, List<Integer> vertices) {
      vertexSets.put(name, ascending(vertices));
      return this;
    }

    /** Adds a set of triangles. */
    public Builder region(String name, List<Integer> triangles) {
      regions.put(name, ascending(triangles));
      return this;
    }

    private static List<Integer> ascending(List<Integer> members) {
      return List.copyOf(new ArrayList<>(new java.util.TreeSet<>(members)));
    }

    /** The mesh. */
    public ShellMesh build() {
      return new ShellMesh(this);
    }
  }
}
