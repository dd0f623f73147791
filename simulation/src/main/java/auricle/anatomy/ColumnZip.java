package auricle.anatomy;

import auricle.geometry.Vectors;
import java.util.List;

/**
 * Joins two neighbouring lines of vertices by triangles, always by the diagonal that is shorter and
 * turns less.
 */
final class ColumnZip {
  /** Length that counts as much as a turn of one radian, mm: our own choice. */
  private static final double TURN_WEIGHT = 4;

  private ColumnZip() {}

  /**
   * Adds the triangles between two lines that run the same way, the second at the left of the first
   * seen against the normals.
   */
  static void join(
      MeshVertices vertices, List<Integer> first, List<Integer> second, List<int[]> triangles) {
    int i = 0;
    int k = 0;
    while (i < first.size() - 1 || k < second.size() - 1) {
      int a = first.get(i);
      int b = second.get(k);
      boolean alongFirst = goesOnFirst(vertices, first, second, i, k);
      int next = alongFirst ? first.get(++i) : second.get(++k);
      triangles.add(new int[] {a, next, b});
    }
  }

  private static boolean goesOnFirst(
      MeshVertices vertices, List<Integer> first, List<Integer> second, int i, int k) {
    if (i == first.size() - 1 || k == second.size() - 1) {
      return k == second.size() - 1;
    }
    double one = distance(vertices, first.get(i + 1), second.get(k));
    double other = distance(vertices, first.get(i), second.get(k + 1));
    return Math.abs(one - other) < 1e-9 ? (i + first.get(0)) % 2 == 0 : one < other;
  }

  /** Distance with the turn of the normal: rows pair with rows that face the same way. */
  private static double distance(MeshVertices vertices, int a, int b) {
    double way = Vectors.norm(Vectors.subtract(vertices.point(a), vertices.point(b)));
    double turn = Vectors.norm(Vectors.subtract(vertices.normal(a), vertices.normal(b)));
    return Math.hypot(way, TURN_WEIGHT * turn);
  }
}
