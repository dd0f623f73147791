package auricle.report.picture;

import java.util.Arrays;

/** How near to the viewer the ear comes on a fine grid, to tell what is hidden behind it. */
final class DepthGrid {
  /** Size of a cell. */
  static final double CELL_MM = 0.15;

  private final double[] seen;
  private final double left;
  private final double low;
  private final int columns;
  private final int rows;
  private final double[] nearest;
  private final float[] light;
  private final float[] lightAtVertex;

  /**
   * @param seen three numbers a vertex: across, up, towards the viewer, mm
   * @param triangles three vertices each
   * @param lightAtVertex share of the light that falls on each vertex
   */
  DepthGrid(double[] seen, int[] triangles, float[] lightAtVertex) {
    this.seen = seen;
    this.lightAtVertex = lightAtVertex;
    double[] box = box(seen);
    this.left = box[0];
    this.low = box[1];
    this.columns = (int) Math.ceil((box[2] - left) / CELL_MM) + 1;
    this.rows = (int) Math.ceil((box[3] - low) / CELL_MM) + 1;
    this.nearest = new double[columns * rows];
    this.light = new float[columns * rows];
    Arrays.fill(nearest, Double.NEGATIVE_INFINITY);
    for (int t = 0; t < triangles.length; t += 3) {
      enter(3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]);
    }
  }

  /** Least and greatest across and up: left, low, right, high. */
  static double[] box(double[] seen) {
    double[] box = {seen[0], seen[1], seen[0], seen[1]};
    for (int i = 0; i < seen.length; i += 3) {
      box[0] = Math.min(box[0], seen[i]);
      box[1] = Math.min(box[1], seen[i + 1]);
      box[2] = Math.max(box[2], seen[i]);
      box[3] = Math.max(box[3], seen[i + 1]);
    }
    return box;
  }

  private void enter(int a, int b, int c) {
    double area = cross(a, b, seen[c], seen[c + 1]);
    if (Math.abs(area) < 1e-12) {
      return;
    }
    int firstColumn = column(Math.min(seen[a], Math.min(seen[b], seen[c])));
    int lastColumn = column(Math.max(seen[a], Math.max(seen[b], seen[c]))) + 1;
    int firstRow = row(Math.min(seen[a + 1], Math.min(seen[b + 1], seen[c + 1])));
    int lastRow = row(Math.max(seen[a + 1], Math.max(seen[b + 1], seen[c + 1]))) + 1;
    for (int j = firstRow; j <= Math.min(lastRow, rows - 1); j++) {
      for (int i = firstColumn; i <= Math.min(lastColumn, columns - 1); i++) {
        enterCell(a, b, c, area, i, j);
      }
    }
  }

  private void enterCell(int a, int b, int c, double area, int i, int j) {
    double x = left + i * CELL_MM;
    double y = low + j * CELL_MM;
    double wc = cross(a, b, x, y) / area;
    double wa = cross(b, c, x, y) / area;
    double wb = 1 - wa - wc;
    if (wa >= -1e-9 && wb >= -1e-9 && wc >= -1e-9) {
      double depth = wa * seen[a + 2] + wb * seen[b + 2] + wc * seen[c + 2];
      int cell = j * columns + i;
      if (depth > nearest[cell]) {
        nearest[cell] = depth;
        light[cell] =
            (float)
                (wa * lightAtVertex[a / 3] + wb * lightAtVertex[b / 3] + wc * lightAtVertex[c / 3]);
      }
    }
  }

  /** Twice the area of the triangle from a by b to a place. */
  private double cross(int a, int b, double x, double y) {
    return (seen[b] - seen[a]) * (y - seen[a + 1]) - (seen[b + 1] - seen[a + 1]) * (x - seen[a]);
  }

  private int column(double x) {
    return Math.max(0, (int) Math.floor((x - left) / CELL_MM));
  }

  private int row(double y) {
    return Math.max(0, (int) Math.floor((y - low) / CELL_MM));
  }

  /**
   * Whether nothing of the ear lies before a place by more than a tolerance.
   *
   * @param tolerance_mm how much may lie before it
   */
  boolean shows(double across, double up, double towards, double tolerance_mm) {
    int i = (int) Math.round((across - left) / CELL_MM);
    int j = (int) Math.round((up - low) / CELL_MM);
    if (i < 0 || j < 0 || i >= columns || j >= rows) {
      return true;
    }
    return towards >= nearest[j * columns + i] - tolerance_mm;
  }

  /** Whether any of the ear lies at a place. */
  boolean covers(double across, double up) {
    int i = (int) Math.round((across - left) / CELL_MM);
    int j = (int) Math.round((up - low) / CELL_MM);
    boolean within = i >= 0 && j >= 0 && i < columns && j < rows;
    return within && nearest[j * columns + i] > Double.NEGATIVE_INFINITY;
  }

  /** Number of cells across. */
  int columns() {
    return columns;
  }

  /** Number of cells up. */
  int rows() {
    return rows;
  }

  /** Place of the first column. */
  double left() {
    return left;
  }

  /** Place of the last row. */
  double top() {
    return low + (rows - 1) * CELL_MM;
  }

  /** Share of the light that falls on what is seen at a cell; NaN where there is nothing. */
  float light(int column, int row) {
    int cell = row * columns + column;
    return nearest[cell] == Double.NEGATIVE_INFINITY ? Float.NaN : light[cell];
  }
}
