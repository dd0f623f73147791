package auricle.mesh;

import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Regular refinement: every triangle is cut into four at the middles of its edges.
 *
 * <p>The middle of an edge is put on the curved surface, not on the chord: on the cubic that leaves
 * both ends at right angles to their normals, with end tangents of length |t| = 2 |e| / (1 + cos
 * φ), φ the angle between chord and tangent. Then an arc of a circle is met: the cubic rises by |t|
 * sin φ / 4 over its chord, the arc by |e| tan(φ/2) / 2, which is the same.
 *
 * <pre>
 *   x = (x0 + x1) / 2 + (t0 − t1) / 8
 *   n = n0 + n1, made perpendicular to the cubic's direction 3/2 e − (t0 + t1) / 4
 * </pre>
 *
 * <p>The error of place and normal is of fourth and third order in the edge where the normals at
 * the ends are exact; on spheres and flat plates there is none. A crease, where one normal stands
 * for two faces, is rounded.
 *
 * <p>Old vertices keep their numbers; the middle of edge e is vertex V + e; triangle t becomes 4 t
 * … 4 t + 3, the last in the middle.
 */
public final class Refinement {
  private final ShellMesh mesh;
  private final Topology topology;
  private final double[] positions;
  private final double[] normals;

  private Refinement(ShellMesh mesh) {
    this.mesh = mesh;
    this.topology = mesh.topology();
    this.positions = java.util.Arrays.copyOf(mesh.positions(), 3 * vertexCount());
    this.normals = java.util.Arrays.copyOf(mesh.normals(), 3 * vertexCount());
  }

  /**
   * The mesh with each triangle cut into four. Regions keep their surface. A middle joins a set of
   * vertices if both ends of its edge are in it, unless the edge crosses from rim to rim and no
   * triangle beside it lies in the set.
   */
  public static ShellMesh refine(ShellMesh mesh) {
    Refinement refinement = new Refinement(mesh);
    for (int e = 0; e < mesh.topology().edgeCount(); e++) {
      refinement.placeMiddle(e);
    }
    return refinement.build();
  }

  private int vertexCount() {
    return topology.vertexCount() + topology.edgeCount();
  }

  private void placeMiddle(int edge) {
    int a = 3 * topology.edgeStart(edge);
    int b = 3 * topology.edgeEnd(edge);
    double[] chord = Vectors.subtract(Vectors.at(positions, b), Vectors.at(positions, a));
    double[] ta = tangent(chord, Vectors.at(normals, a));
    double[] tb = tangent(chord, Vectors.at(normals, b));
    double[] way = Vectors.add(Vectors.scale(1.5, chord), -0.25, Vectors.add(ta, 1, tb));
    double[] along = Vectors.unit(way);
    double[] sum = Vectors.add(Vectors.at(normals, a), 1, Vectors.at(normals, b));
    double[] normal = Vectors.unit(Vectors.add(sum, -Vectors.dot(sum, along), along));
    int middle = 3 * (topology.vertexCount() + edge);
    for (int c = 0; c < 3; c++) {
      positions[middle + c] = (positions[a + c] + positions[b + c]) / 2 + (ta[c] - tb[c]) / 8;
      normals[middle + c] = normal[c];
    }
  }

  /** Direction of the surface along a chord at an end of it, as long as an arc needs it. */
  private static double[] tangent(double[] chord, double[] normal) {
    double[] flat = Vectors.add(chord, -Vectors.dot(chord, normal), normal);
    double length = Vectors.norm(chord);
    double cosine = Vectors.norm(flat) / length;
    // a normal along the edge has no tangent: the chord will do
    return cosine > 1e-6 ? Vectors.scale(2 / (1 + cosine) / cosine, flat) : chord;
  }

  private ShellMesh build() {
    int[] triangles = new int[12 * topology.triangleCount()];
    for (int t = 0; t < topology.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        triangles[12 * t + 3 * c] = topology.vertex(t, c);
        triangles[12 * t + 3 * c + 1] = middle(t, (c + 2) % 3);
        triangles[12 * t + 3 * c + 2] = middle(t, (c + 1) % 3);
        triangles[12 * t + 9 + c] = middle(t, c);
      }
    }
    ShellMesh.Builder builder =
        ShellMesh.builder(positions, normals, new Topology(vertexCount(), triangles));
    mesh.vertexSets().forEach((name, set) -> builder.vertexSet(name, withMiddles(set)));
    mesh.regions().forEach((name, region) -> builder.region(name, parts(region)));
    return builder.build();
  }

  private int middle(int triangle, int corner) {
    return topology.vertexCount() + topology.edge(triangle, corner);
  }

  private static List<Integer> parts(List<Integer> region) {
    List<Integer> parts = new ArrayList<>();
    for (int t : region) {
      parts.addAll(List.of(4 * t, 4 * t + 1, 4 * t + 2, 4 * t + 3));
    }
    return parts;
  }

  private List<Integer> withMiddles(List<Integer> set) {
    BitSet in = new BitSet();
    set.forEach(in::set);
    BitSet rim = rim();
    List<Integer> all = new ArrayList<>(set);
    for (int e = 0; e < topology.edgeCount(); e++) {
      int a = topology.edgeStart(e);
      int b = topology.edgeEnd(e);
      boolean crosses = rim.get(a) && rim.get(b) && !topology.isBoundary(e);
      if (in.get(a) && in.get(b) && (!crosses || besideWholeTriangle(e, in))) {
        all.add(topology.vertexCount() + e);
      }
    }
    return all;
  }

  private BitSet rim() {
    BitSet rim = new BitSet();
    for (int e = 0; e < topology.edgeCount(); e++) {
      if (topology.isBoundary(e)) {
        rim.set(topology.edgeStart(e));
        rim.set(topology.edgeEnd(e));
      }
    }
    return rim;
  }

  private boolean besideWholeTriangle(int edge, BitSet in) {
    return isWhole(topology.leftTriangle(edge), in) || isWhole(topology.rightTriangle(edge), in);
  }

  private boolean isWhole(int t, BitSet in) {
    return t >= 0
        && in.get(topology.vertex(t, 0))
        && in.get(topology.vertex(t, 1))
        && in.get(topology.vertex(t, 2));
  }
}
