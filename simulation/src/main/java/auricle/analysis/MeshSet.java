package auricle.analysis;

import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntPredicate;

/** Some vertices, edges and triangles of a mesh. Immutable; indices ascend. */
public final class MeshSet {
  private final int[] vertices;
  private final int[] edges;
  private final int[] triangles;

  private MeshSet(int[] vertices, int[] edges, int[] triangles) {
    this.vertices = vertices;
    this.edges = edges;
    this.triangles = triangles;
  }

  /**
   * The vertices that are accepted, with every edge and triangle all of whose vertices are.
   *
   * @param topology the mesh
   * @param accepted asked once a vertex
   */
  public static MeshSet ofVertices(Topology topology, IntPredicate accepted) {
    BitSet in = new BitSet(topology.vertexCount());
    for (int v = 0; v < topology.vertexCount(); v++) {
      in.set(v, accepted.test(v));
    }
    BitSet edges = new BitSet();
    for (int e = 0; e < topology.edgeCount(); e++) {
      edges.set(e, in.get(topology.edgeStart(e)) && in.get(topology.edgeEnd(e)));
    }
    BitSet triangles = new BitSet();
    for (int t = 0; t < topology.triangleCount(); t++) {
      triangles.set(
          t,
          in.get(topology.vertex(t, 0))
              && in.get(topology.vertex(t, 1))
              && in.get(topology.vertex(t, 2)));
    }
    return of(in, edges, triangles);
  }

  /** The edges that are accepted, with their ends and no triangles. */
  public static MeshSet ofEdges(Topology topology, IntPredicate accepted) {
    BitSet vertices = new BitSet();
    BitSet edges = new BitSet();
    for (int e = 0; e < topology.edgeCount(); e++) {
      if (accepted.test(e)) {
        edges.set(e);
        vertices.set(topology.edgeStart(e));
        vertices.set(topology.edgeEnd(e));
      }
    }
    return of(vertices, edges, new BitSet());
  }

  /** The triangles that are accepted, with their edges and vertices. */
  public static MeshSet ofTriangles(Topology topology, IntPredicate accepted) {
    BitSet vertices = new BitSet();
    BitSet edges = new BitSet();
    BitSet triangles = new BitSet();
    for (int t = 0; t < topology.triangleCount(); t++) {
      if (accepted.test(t)) {
        triangles.set(t);
        for (int c = 0; c < 3; c++) {
          vertices.set(topology.vertex(t, c));
          edges.set(topology.edge(t, c));
        }
      }
    }
    return of(vertices, edges, triangles);
  }

  private static MeshSet of(BitSet vertices, BitSet edges, BitSet triangles) {
    return new MeshSet(
        vertices.stream().toArray(), edges.stream().toArray(), triangles.stream().toArray());
  }

  /** What lies in this and in another. */
  public MeshSet and(MeshSet other) {
    return new MeshSet(
        common(vertices, other.vertices),
        common(edges, other.edges),
        common(triangles, other.triangles));
  }

  /** What lies in this or in another. */
  public MeshSet or(MeshSet other) {
    return new MeshSet(
        either(vertices, other.vertices),
        either(edges, other.edges),
        either(triangles, other.triangles));
  }

  /** What lies in this and not in another. */
  public MeshSet without(MeshSet other) {
    return new MeshSet(
        less(vertices, other.vertices), less(edges, other.edges), less(triangles, other.triangles));
  }

  private static int[] common(int[] a, int[] b) {
    return Arrays.stream(a).filter(i -> Arrays.binarySearch(b, i) >= 0).toArray();
  }

  private static int[] less(int[] a, int[] b) {
    return Arrays.stream(a).filter(i -> Arrays.binarySearch(b, i) < 0).toArray();
  }

  private static int[] either(int[] a, int[] b) {
    BitSet all = new BitSet();
    Arrays.stream(a).forEach(all::set);
    Arrays.stream(b).forEach(all::set);
    return all.stream().toArray();
  }

  /** Whether it holds no vertex. */
  public boolean isEmpty() {
    return vertices.length == 0;
  }

  /** The vertices; a copy. */
  public int[] vertices() {
    return vertices.clone();
  }

  /** The edges; a copy. */
  public int[] edges() {
    return edges.clone();
  }

  /** The triangles; a copy. */
  public int[] triangles() {
    return triangles.clone();
  }
}
