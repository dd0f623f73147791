package auricle.mesh;

import auricle.diagnostics.Findings;
import auricle.geometry.Vectors;

/** Edges across which a mesh turns sharply. */
final class Creases {
  private Creases() {}

  /** Turn between the faces of an edge, rad, 0 … pi; 0 at a boundary. */
  static double turn(double[] x, Topology topology, int edge) {
    if (topology.isBoundary(edge)) {
      return 0;
    }
    double[] left = faceNormal(x, topology, topology.leftTriangle(edge));
    double[] right = faceNormal(x, topology, topology.rightTriangle(edge));
    return Math.atan2(Vectors.norm(Vectors.cross(left, right)), Vectors.dot(left, right));
  }

  /** Unit normal of a triangle. */
  static double[] faceNormal(double[] x, Topology topology, int t) {
    double[] p = Vectors.at(x, 3 * topology.vertex(t, 0));
    double[] a = Vectors.subtract(Vectors.at(x, 3 * topology.vertex(t, 1)), p);
    double[] b = Vectors.subtract(Vectors.at(x, 3 * topology.vertex(t, 2)), p);
    return Vectors.unit(Vectors.cross(a, b));
  }

  /**
   * Warns of creases: the one director of a vertex on them is the bisector of their sides, so that
   * the triangles beside them bear a rest curvature that a sharp fold has not.
   */
  static void warn(ShellMesh mesh, String where, Findings findings) {
    double[] x = mesh.positions();
    Offenders sharp = new Offenders();
    for (int e = 0; e < mesh.topology().edgeCount(); e++) {
      double turn = turn(x, mesh.topology(), e);
      if (turn > VertexNormals.CREASE) {
        int a = mesh.topology().edgeStart(e);
        int b = mesh.topology().edgeEnd(e);
        sharp.add(
            place(x, a)
                + " to "
                + place(x, b)
                + " by "
                + Math.round(Math.toDegrees(turn))
                + " deg");
      }
    }
    sharp.warning(
        findings,
        where,
        "edges where the surface turns by more than "
            + Math.round(Math.toDegrees(VertexNormals.CREASE))
            + " deg",
        "a smooth surface: a fold is taken for a tight bend, one triangle wide",
        "Refine the mesh if it is curved there; judge stresses beside a true fold with care.");
  }

  private static String place(double[] x, int v) {
    return "(" + (float) x[3 * v] + ", " + (float) x[3 * v + 1] + ", " + (float) x[3 * v + 2] + ")";
  }
}
