package auricle.mesh;

import java.util.ArrayList;
import java.util.List;

/** Joins rows of different numbers of vertices, like a zip: the row that lags in s goes on. */
final class RowZip {
  private RowZip() {}

  /** The triangles between all rows. */
  static List<int[]> triangles(ParametricSurface surface, GridRows rows) {
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j + 1 < rows.count(); j++) {
      zip(surface.closed(), rows, j, triangles);
    }
    return triangles;
  }

  private static void zip(boolean closed, GridRows rows, int j, List<int[]> triangles) {
    int lower = steps(closed, rows.row(j));
    int upper = steps(closed, rows.row(j + 1));
    int i = 0;
    int k = 0;
    while (i < lower || k < upper) {
      int a = rows.vertex(i, j);
      int d = rows.vertex(k, j + 1);
      if (k == upper || (i < lower && lowerLags(rows, j, i, k))) {
        triangles.add(new int[] {a, rows.vertex(++i, j), d});
      } else {
        triangles.add(new int[] {a, rows.vertex(++k, j + 1), d});
      }
    }
  }

  private static int steps(boolean closed, List<Integer> row) {
    return closed && row.size() > 1 ? row.size() : row.size() - 1;
  }

  /** By the middles of the next steps; where they are level, diagonals alternate. */
  private static boolean lowerLags(GridRows rows, int j, int i, int k) {
    double lower = rows.s(i, j) + rows.s(i + 1, j);
    double upper = rows.s(k, j + 1) + rows.s(k + 1, j + 1);
    return Math.abs(lower - upper) < 1e-9 ? (i + j) % 2 == 0 : lower < upper;
  }
}
