package auricle.mesh;

import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Unit normals of the smooth surface that a mesh approximates, estimated at its vertices.
 *
 * <p>Around every vertex a quadric is fitted to the vertices within two rings of triangles ({@link
 * QuadricFit}), which gives normals of second order in the mesh size on irregular meshes and at
 * boundaries too (Cazals and Pouget 2005, Computer Aided Geometric Design 22, theorem on fits of
 * degree 2; normals averaged from faces are of first order there). Rings do not cross a crease,
 * that is an edge between faces whose normals differ by more than a limit; a vertex on a crease
 * gets the bisector of the normals of its sides. Where the neighbours do not fix a quadric, one
 * that is straight across the longer direction is fitted (a strip one triangle wide), else the
 * faces' normals are averaged by angle.
 *
 * <p>Normals point to the side from which the triangles run anticlockwise.
 */
public final class VertexNormals {
  /** Turn between two faces from which an edge counts as a crease: 40 deg (our own choice), rad. */
  public static final double CREASE = Math.toRadians(40);

  private final double[] x;
  private final Topology topology;
  private final FaceRings rings;

  private VertexNormals(double[] x, Topology topology, double creaseAngle) {
    this.x = x;
    this.topology = topology;
    this.rings = new FaceRings(x, topology, creaseAngle);
  }

  /**
   * Normals, three numbers a vertex.
   *
   * @param positions x, y, z of each vertex, every one of them used by a triangle
   * @param topology triangles of some area
   * @param creaseAngle turn between two faces from which their edge counts as sharp, rad; pi for
   *     none
   */
  public static double[] estimate(double[] positions, Topology topology, double creaseAngle) {
    VertexNormals all = new VertexNormals(positions, topology, creaseAngle);
    double[] normals = new double[positions.length];
    for (int v = 0; v < topology.vertexCount(); v++) {
      System.arraycopy(all.at(v), 0, normals, 3 * v, 3);
    }
    return normals;
  }

  /** Mean of the normals of the smooth sides that meet in a vertex. */
  private double[] at(int v) {
    double[] sum = new double[3];
    for (List<Integer> side : rings.sides(v)) {
      sum = Vectors.add(sum, 1, sideNormal(v, side));
    }
    // sides folded flat onto each other have no bisector: either will do
    return Vectors.norm(sum) > 1e-6 ? Vectors.unit(sum) : sideNormal(v, rings.sides(v).get(0));
  }

  private double[] sideNormal(int v, List<Integer> side) {
    double[] mean = Vectors.unit(meanNormal(v, side));
    List<Integer> two = rings.grown(side);
    List<double[]> near = relative(v, two);
    return QuadricFit.normal(near, mean)
        .or(() -> withoutFullRing(near, relative(v, rings.grown(two)), mean))
        .orElse(mean);
  }

  private static Optional<double[]> withoutFullRing(
      List<double[]> near, List<double[]> far, double[] mean) {
    return QuadricFit.normal(far, mean)
        .or(() -> QuadricFit.normalOfRows(near, mean))
        .or(() -> QuadricFit.normalOfRows(far, mean));
  }

  /** Offsets from a vertex to the other vertices of some triangles. */
  private List<double[]> relative(int v, List<Integer> triangles) {
    List<double[]> offsets = new ArrayList<>();
    double[] origin = Vectors.at(x, 3 * v);
    for (int other : rings.vertices(triangles)) {
      if (other != v) {
        offsets.add(Vectors.subtract(Vectors.at(x, 3 * other), origin));
      }
    }
    return offsets;
  }

  /** Sum of the normals of the faces, each times its angle at the vertex. */
  private double[] meanNormal(int v, List<Integer> side) {
    double[] sum = new double[3];
    for (int t : side) {
      int c = topology.vertex(t, 0) == v ? 0 : topology.vertex(t, 1) == v ? 1 : 2;
      double[] p = Vectors.at(x, 3 * v);
      double[] a = Vectors.subtract(Vectors.at(x, 3 * topology.vertex(t, (c + 1) % 3)), p);
      double[] b = Vectors.subtract(Vectors.at(x, 3 * topology.vertex(t, (c + 2) % 3)), p);
      double[] n = Vectors.cross(a, b);
      double angle = Math.atan2(Vectors.norm(n), Vectors.dot(a, b));
      sum = Vectors.add(sum, angle, Vectors.unit(n));
    }
    return Vectors.norm(sum) > 1e-9 ? sum : Creases.faceNormal(x, topology, side.get(0));
  }
}
