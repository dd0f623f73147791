package auricle.mesh;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * The vertices of a grid in the parameters of a surface, row by row along t. A row runs along s; on
 * a closed surface it ends before it meets its beginning; where a side is a point it is one vertex.
 */
final class GridRows {
  private final ParametricSurface surface;
  private final GridOptions options;
  private final List<double[]> parameters = new ArrayList<>();
  private final List<List<Integer>> rows = new ArrayList<>();

  GridRows(ParametricSurface surface, GridOptions options) {
    this.surface = surface;
    this.options = options;
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(options.seed());
    double widest = widest();
    for (int j = 0; j <= options.second(); j++) {
      boolean point =
          (j == 0 && surface.pointAtLow()) || (j == options.second() && surface.pointAtHigh());
      place(j, point ? 0 : cells(j, widest), random);
    }
  }

  private double widest() {
    double widest = 0;
    for (int j = 0; j <= options.second(); j++) {
      widest = Math.max(widest, SurfaceLengths.alongS(surface, (double) j / options.second()));
    }
    return widest;
  }

  /** Cells of a row: as many everywhere, or as its length asks for. */
  private int cells(int j, double widest) {
    if (!options.thinsShortRows(surface)) {
      return options.first();
    }
    double length = SurfaceLengths.alongS(surface, (double) j / options.second());
    int least = surface.closed() ? 3 : 1;
    return Math.max(least, (int) Math.round(options.first() * length / widest));
  }

  private void place(int j, int cells, UniformRandomProvider random) {
    List<Integer> row = new ArrayList<>();
    int last = cells == 0 || surface.closed() ? cells - 1 : cells;
    for (int i = 0; i <= Math.max(0, last); i++) {
      double ds = options.shift() * (2 * random.nextDouble() - 1);
      double dt = options.shift() * (2 * random.nextDouble() - 1);
      boolean freeS = surface.closed() || (i > 0 && i < cells);
      boolean freeT = j > 0 && j < options.second();
      row.add(parameters.size());
      parameters.add(
          new double[] {
            cells == 0 ? 0.5 : (i + (freeS ? ds : 0)) / cells,
            (j + (freeT ? dt : 0)) / options.second()
          });
    }
    rows.add(row);
  }

  /** s and t of every vertex; to be added to. */
  List<double[]> parameters() {
    return parameters;
  }

  /** Number of rows. */
  int count() {
    return rows.size();
  }

  /** Vertices of a row, in order. */
  List<Integer> row(int j) {
    return rows.get(j);
  }

  /** Vertex i of row j; on a closed surface, and at a point, it goes round. */
  int vertex(int i, int j) {
    return rows.get(j).get(i % rows.get(j).size());
  }

  /** s of vertex i of row j, also beyond the end of a row that closes. */
  double s(int i, int j) {
    int size = rows.get(j).size();
    int wholeTurns = i / size;
    return parameters.get(vertex(i, j))[0] + wholeTurns;
  }
}
