package auricle.mesh;

import java.util.List;

/** Turns triangles so that they run anticlockwise seen against the normals of their corners. */
final class Orientation {
  private Orientation() {}

  /**
   * Flat triangle array, all turned alike.
   *
   * @param n normals, three numbers a vertex
   * @param x positions, three numbers a vertex
   * @param triangles corners
   */
  static int[] along(double[] n, double[] x, List<int[]> triangles) {
    int[] flat = new int[3 * triangles.size()];
    double facing = 0;
    for (int t = 0; t < triangles.size(); t++) {
      for (int c = 0; c < 3; c++) {
        flat[3 * t + c] = triangles.get(t)[c];
      }
      facing += facing(flat, t, n, x);
    }
    for (int t = 0; facing < 0 && t < triangles.size(); t++) {
      int keep = flat[3 * t + 1];
      flat[3 * t + 1] = flat[3 * t + 2];
      flat[3 * t + 2] = keep;
    }
    return flat;
  }

  private static double facing(int[] flat, int t, double[] n, double[] x) {
    int a = 3 * flat[3 * t];
    int b = 3 * flat[3 * t + 1];
    int c = 3 * flat[3 * t + 2];
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      int l = (k + 1) % 3;
      int m = (k + 2) % 3;
      double area =
          (x[b + l] - x[a + l]) * (x[c + m] - x[a + m])
              - (x[b + m] - x[a + m]) * (x[c + l] - x[a + l]);
      sum += area * (n[a + k] + n[b + k] + n[c + k]);
    }
    return sum;
  }
}
