package auricle.mesh;

import auricle.geometry.Vectors;

/** The faces of a raw mesh as triangles; a quadrilateral is cut along its better diagonal. */
final class Triangulation {
  private final RawMesh raw;
  private final int[] triangles;
  private final int[] faceOf;

  /**
   * Cuts the faces.
   *
   * @param raw faces of three or four corners, all of them vertices of the mesh
   */
  Triangulation(RawMesh raw) {
    this.raw = raw;
    int count = 0;
    for (int f = 0; f < raw.faceCount(); f++) {
      count += raw.cornerCount(f) - 2;
    }
    this.triangles = new int[3 * count];
    this.faceOf = new int[count];
    int next = 0;
    for (int f = 0; f < raw.faceCount(); f++) {
      if (raw.cornerCount(f) == 4) {
        cut(next, f);
      } else {
        put(next, f, 0, 1, 2);
      }
      next += raw.cornerCount(f) - 2;
    }
  }

  /** Number of triangles. */
  int count() {
    return faceOf.length;
  }

  /** Vertex at a corner (0, 1, 2) of a triangle. */
  int vertex(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  /** The face that a triangle was cut from. */
  int face(int triangle) {
    return faceOf[triangle];
  }

  /** "face 17", as the file counts. */
  String name(int triangle) {
    return "face " + raw.number(face(triangle));
  }

  private void put(int triangle, int face, int a, int b, int c) {
    triangles[3 * triangle] = raw.corner(face, a);
    triangles[3 * triangle + 1] = raw.corner(face, b);
    triangles[3 * triangle + 2] = raw.corner(face, c);
    faceOf[triangle] = face;
  }

  /** Along the shorter diagonal of those that leave both triangles facing the same way. */
  private void cut(int triangle, int face) {
    boolean first = facesAlike(face, 0);
    boolean second = facesAlike(face, 1);
    boolean shorter = length(face, 0, 2) <= length(face, 1, 3);
    if (first == second ? shorter : first) {
      put(triangle, face, 0, 1, 2);
      put(triangle + 1, face, 0, 2, 3);
    } else {
      put(triangle, face, 0, 1, 3);
      put(triangle + 1, face, 1, 2, 3);
    }
  }

  private boolean facesAlike(int face, int from) {
    double[] diagonal = side(face, from, (from + 2) % 4);
    double[] a = Vectors.cross(side(face, from, (from + 1) % 4), diagonal);
    double[] b = Vectors.cross(diagonal, side(face, from, (from + 3) % 4));
    return Vectors.dot(a, b) > 0;
  }

  private double length(int face, int from, int to) {
    return Vectors.norm(side(face, from, to));
  }

  private double[] side(int face, int from, int to) {
    double[] d = new double[3];
    for (int c = 0; c < 3; c++) {
      d[c] = raw.position(raw.corner(face, to), c) - raw.position(raw.corner(face, from), c);
    }
    return d;
  }
}
