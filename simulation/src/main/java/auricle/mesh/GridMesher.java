package auricle.mesh;

import auricle.geometry.Vectors;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Meshes a {@link ParametricSurface} by a grid in its parameters.
 *
 * <p>Vertex sets: {@code start} (s = 0), {@code end} (s = 1), {@code side_low} (t = 0), {@code
 * side_high} (t = 1) and the corners {@code start_low}, {@code start_high}, {@code end_low}, {@code
 * end_high}; on a closed surface only the sides. Triangles are turned so that they run
 * anticlockwise seen against the surface normal.
 */
public final class GridMesher {
  /** Height over longest side of a triangle that has lost its area to rounding. */
  private static final double NO_AREA = 1e-9;

  private final ParametricSurface surface;
  private final GridRows rows;
  private final List<int[]> triangles;

  private GridMesher(ParametricSurface surface, GridOptions options) {
    this.surface = surface;
    this.rows = new GridRows(surface, options);
    this.triangles =
        switch (options.pattern()) {
          case UNALIGNED -> UnalignedCut.triangles(surface, rows.parameters());
          case EVEN_ROWS -> RowZip.triangles(surface, rows);
          default -> CellCut.triangles(surface, options, rows);
        };
  }

  /**
   * The mesh of a surface.
   *
   * @throws IllegalArgumentException if the options do not suit the surface
   */
  public static ShellMesh mesh(ParametricSurface surface, GridOptions options) {
    return new GridMesher(surface, options).build();
  }

  private ShellMesh build() {
    List<double[]> parameters = rows.parameters();
    double[] x = new double[3 * parameters.size()];
    double[] n = new double[x.length];
    double[] point = new double[3];
    double[] normal = new double[3];
    for (int v = 0; v < parameters.size(); v++) {
      surface.at(parameters.get(v)[0], parameters.get(v)[1], point, normal);
      if (!(Vectors.norm(normal) > 0)) {
        throw new IllegalArgumentException("no normal at " + Arrays.toString(point));
      }
      System.arraycopy(point, 0, x, 3 * v, 3);
      System.arraycopy(normal, 0, n, 3 * v, 3);
    }
    checkShapes(x);
    int[] flat = Orientation.along(n, x, triangles);
    ShellMesh.Builder builder = ShellMesh.builder(x, n, new Topology(parameters.size(), flat));
    addSets(builder);
    return builder.build();
  }

  private void checkShapes(double[] x) {
    for (int[] triangle : triangles) {
      if (!(FaceCheck.relativeHeight(x, triangle) > NO_AREA)) {
        throw new IllegalArgumentException(
            "a triangle without area at " + Arrays.toString(Vectors.at(x, 3 * triangle[0])));
      }
    }
  }

  private void addSets(ShellMesh.Builder builder) {
    List<Integer> low = rows.row(0);
    List<Integer> high = rows.row(rows.count() - 1);
    builder.vertexSet("side_low", low).vertexSet("side_high", high);
    if (surface.closed()) {
      return;
    }
    List<Integer> start = new ArrayList<>();
    List<Integer> end = new ArrayList<>();
    for (int j = 0; j < rows.count(); j++) {
      start.add(rows.row(j).get(0));
      end.add(rows.row(j).get(rows.row(j).size() - 1));
    }
    builder.vertexSet("start", start).vertexSet("end", end);
    builder.vertexSet("start_low", first(start)).vertexSet("start_high", last(start));
    builder.vertexSet("end_low", first(end)).vertexSet("end_high", last(end));
  }

  private static List<Integer> first(List<Integer> line) {
    return line.subList(0, 1);
  }

  private static List<Integer> last(List<Integer> line) {
    return line.subList(line.size() - 1, line.size());
  }
}
