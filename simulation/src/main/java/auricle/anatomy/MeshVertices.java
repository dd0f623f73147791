package auricle.anatomy;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.ResizableDoubleArray;

/** Vertices of a mesh while it grows: place on the chart, position and normal. */
final class MeshVertices {
  private final ResizableDoubleArray around = new ResizableDoubleArray();
  private final ResizableDoubleArray across = new ResizableDoubleArray();
  private final List<double[]> points = new ArrayList<>();
  private final List<double[]> normals = new ArrayList<>();

  /** Adds a vertex. */
  void add(double around, double across, double[] point, double[] normal) {
    this.around.addElement(around);
    this.across.addElement(across);
    points.add(point);
    normals.add(normal);
  }

  int count() {
    return points.size();
  }

  double around(int vertex) {
    return around.getElement(vertex);
  }

  double across(int vertex) {
    return across.getElement(vertex);
  }

  double[] point(int vertex) {
    return points.get(vertex);
  }

  double[] normal(int vertex) {
    return normals.get(vertex);
  }

  /** All coordinates, three a vertex, mm. */
  double[] positions() {
    return flat(points);
  }

  /** All normals, three numbers a vertex. */
  double[] normals() {
    return flat(normals);
  }

  private static double[] flat(List<double[]> rows) {
    double[] all = new double[3 * rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      System.arraycopy(rows.get(i), 0, all, 3 * i, 3);
    }
    return all;
  }
}
