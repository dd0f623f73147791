package auricle.mesh;

import auricle.diagnostics.Findings;
import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Faults that show in single vertices and faces: coordinates, corners, shape. */
final class FaceCheck {
  /**
   * A triangle whose height is less than this part of its longest side has no usable plane: with
   * coordinates of single precision (1e-7 of the size) its direction would be off by a part in a
   * thousand. Our own choice.
   */
  static final double LEAST_HEIGHT = 1e-4;

  /** The vertices of a triangle, ascending. */
  private record Corners(int low, int middle, int high) {}

  private FaceCheck() {}

  /**
   * Coordinates, numbers of corners and the vertices that they name.
   *
   * @return whether the faces can be looked at further
   */
  static boolean corners(RawMesh raw, String where, Findings findings) {
    Offenders coordinates = new Offenders();
    for (int v = 0; v < raw.vertexCount(); v++) {
      if (!Double.isFinite(raw.position(v, 0) + raw.position(v, 1) + raw.position(v, 2))) {
        coordinates.add(vertex(raw, v));
      }
    }
    Offenders sizes = new Offenders();
    Offenders missing = new Offenders();
    for (int f = 0; f < raw.faceCount(); f++) {
      int n = raw.cornerCount(f);
      if (n < 3 || n > 4) {
        sizes.add("face " + raw.number(f) + " has " + n);
      }
      addMissing(raw, f, missing);
    }
    coordinates.error(findings, where, "vertices without a finite place", "finite coordinates", "");
    sizes.error(
        findings,
        where,
        "faces with a wrong number of corners",
        "three or four",
        "Triangulate the mesh in the program that wrote it.");
    String range =
        "vertex numbers from " + raw.number(0) + " to " + raw.number(raw.vertexCount() - 1);
    missing.error(findings, where, "faces that name a vertex which is not there", range, "");
    return coordinates.count() + sizes.count() + missing.count() == 0;
  }

  private static void addMissing(RawMesh raw, int f, Offenders missing) {
    for (int c = 0; c < raw.cornerCount(f); c++) {
      int v = raw.corner(f, c);
      if (v < 0 || v >= raw.vertexCount()) {
        missing.add("face " + raw.number(f) + " names vertex " + raw.number(v));
        return;
      }
    }
  }

  /** Triangles without area, and triangles that are there twice. */
  static void shapes(RawMesh raw, Triangulation mesh, String where, Findings findings) {
    Offenders degenerate = new Offenders();
    Offenders twice = new Offenders();
    Map<Corners, Integer> known = new HashMap<>();
    double[] x = raw.positions();
    for (int t = 0; t < mesh.count(); t++) {
      int[] v = {mesh.vertex(t, 0), mesh.vertex(t, 1), mesh.vertex(t, 2)};
      double height = relativeHeight(x, v);
      if (!(height >= LEAST_HEIGHT)) {
        degenerate.add(mesh.name(t) + " (height " + (float) height + " of its longest side)");
      }
      Arrays.sort(v);
      Integer before = known.putIfAbsent(new Corners(v[0], v[1], v[2]), t);
      if (before != null) {
        twice.add(mesh.name(before) + " and " + mesh.name(t));
      }
    }
    degenerate.error(
        findings,
        where,
        "degenerate triangles",
        "a height of at least " + LEAST_HEIGHT + " of the longest side",
        "Collapse short edges or mesh the surface anew.");
    twice.error(
        findings, where, "triangles that are there twice", "each one once", "Delete the copies.");
  }

  /** Smallest height of a triangle over its longest side; 0 for three points on a line. */
  static double relativeHeight(double[] x, int[] v) {
    double[] a = Vectors.subtract(Vectors.at(x, 3 * v[1]), Vectors.at(x, 3 * v[0]));
    double[] b = Vectors.subtract(Vectors.at(x, 3 * v[2]), Vectors.at(x, 3 * v[0]));
    double[] c = Vectors.subtract(b, a);
    double longest = Math.max(Vectors.dot(a, a), Math.max(Vectors.dot(b, b), Vectors.dot(c, c)));
    return longest > 0 ? Vectors.norm(Vectors.cross(a, b)) / longest : 0;
  }

  /** "vertex 3 at (1.0, 2.0, NaN)". */
  static String vertex(RawMesh raw, int v) {
    return "vertex "
        + raw.number(v)
        + " at ("
        + (float) raw.position(v, 0)
        + ", "
        + (float) raw.position(v, 1)
        + ", "
        + (float) raw.position(v, 2)
        + ")";
  }
}
