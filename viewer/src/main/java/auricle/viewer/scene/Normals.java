package auricle.viewer.scene;

/** Normals of a triangulated surface at its vertices, weighted by area. */
public final class Normals {
  private Normals() {}

  /** Unit normals, three numbers a vertex; the triangles run anticlockwise seen against them. */
  public static float[] of(float[] points, int[] triangles) {
    float[] normals = new float[points.length];
    for (int i = 0; i < triangles.length; i += 3) {
      add(points, triangles[i], triangles[i + 1], triangles[i + 2], normals);
    }
    for (int v = 0; v < normals.length / 3; v++) {
      Vectors.normalise(normals, v);
    }
    return normals;
  }

  private static void add(float[] p, int a, int b, int c, float[] normals) {
    float ux = p[3 * b] - p[3 * a];
    float uy = p[3 * b + 1] - p[3 * a + 1];
    float uz = p[3 * b + 2] - p[3 * a + 2];
    float vx = p[3 * c] - p[3 * a];
    float vy = p[3 * c + 1] - p[3 * a + 1];
    float vz = p[3 * c + 2] - p[3 * a + 2];
    for (int v : new int[] {a, b, c}) {
      normals[3 * v] += uy * vz - uz * vy;
      normals[3 * v + 1] += uz * vx - ux * vz;
      normals[3 * v + 2] += ux * vy - uy * vx;
    }
  }
}
