package auricle.mesh;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Meshes a {@link ParametricSurface} by a grid in its parameters.
 *
 * <p>Vertex sets: {@code start} (s = 0), {@code end} (s = 1), {@code side_low} (t = 0), {@code
 * side_high} (t = 1) and the corners {@code start_low}, {@code start_high}, {@code end_low}, {@code
 * end_high}; on a closed surface only the sides. Triangles are turned so that they run
 * anticlockwise seen against the surface normal.
 */
public final class GridMesher {
  private final ParametricSurface surface;
  private final GridOptions options;
  private final int columns;
  private final List<double[]> parameters = new ArrayList<>();
  private final List<int[]> triangles = new ArrayList<>();

  private GridMesher(ParametricSurface surface, GridOptions options) {
    this.surface = surface;
    this.options = options;
    this.columns = surface.closed() ? options.first() : options.first() + 1;
  }

  /** The mesh of a surface. */
  public static ShellMesh mesh(ParametricSurface surface, GridOptions options) {
    GridMesher mesher = new GridMesher(surface, options);
    mesher.placeVertices();
    if (options.pattern() == GridOptions.Pattern.UNALIGNED) {
      mesher.triangles.addAll(UnalignedCut.triangles(surface, mesher.parameters));
    } else {
      mesher.cutCells();
    }
    return mesher.build();
  }

  private void placeVertices() {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(options.seed());
    for (int j = 0; j <= options.second(); j++) {
      for (int i = 0; i < columns; i++) {
        double ds = options.jitter() * (2 * random.nextDouble() - 1);
        double dt = options.jitter() * (2 * random.nextDouble() - 1);
        boolean freeS = surface.closed() || (i > 0 && i < options.first());
        boolean freeT = j > 0 && j < options.second();
        boolean corner = !freeS && !freeT;
        double s = (i + (freeS && !corner ? ds : 0)) / options.first();
        double t = (j + (freeT ? dt : 0)) / options.second();
        parameters.add(new double[] {s, t});
      }
    }
  }

  private int vertex(int i, int j) {
    if (surface.pointAtLow() && j == 0) {
      return 0;
    }
    if (surface.pointAtHigh() && j == options.second()) {
      return options.second() * columns;
    }
    return j * columns + (surface.closed() ? i % columns : i);
  }

  private void cutCells() {
    for (int j = 0; j < options.second(); j++) {
      for (int i = 0; i < options.first(); i++) {
        cut(i, j);
      }
    }
  }

  private void cut(int i, int j) {
    int a = vertex(i, j);
    int b = vertex(i + 1, j);
    int c = vertex(i + 1, j + 1);
    int d = vertex(i, j + 1);
    if (a == b) {
      triangles.add(new int[] {a, c, d});
    } else if (c == d) {
      triangles.add(new int[] {a, b, c});
    } else if (options.pattern() == GridOptions.Pattern.CROSSED) {
      cross(i, a, b, c, d);
    } else {
      split(i, j, a, b, c, d);
    }
  }

  private void cross(int i, int a, int b, int c, int d) {
    double wrap = surface.closed() && i == options.first() - 1 ? 1 : 0;
    double s = 0;
    double t = 0;
    for (int k : new int[] {a, b, c, d}) {
      s += (parameters.get(k)[0] + (k == b || k == c ? wrap : 0)) / 4;
      t += parameters.get(k)[1] / 4;
    }
    int m = parameters.size();
    parameters.add(new double[] {s, t});
    triangles.addAll(
        List.of(
            new int[] {a, b, m}, new int[] {b, c, m}, new int[] {c, d, m}, new int[] {d, a, m}));
  }

  private void split(int i, int j, int a, int b, int c, int d) {
    boolean rising = options.pattern() == GridOptions.Pattern.ONE_WAY || (i + j) % 2 == 0;
    boolean wraps = surface.closed() && i == options.first() - 1;
    // a shifted cell may be concave: then only one diagonal lies inside it
    boolean risingFits = wraps || (turn(a, b, c) > 0 && turn(a, c, d) > 0);
    boolean fallingFits = wraps || (turn(a, b, d) > 0 && turn(b, c, d) > 0);
    if (rising ? risingFits || !fallingFits : risingFits && !fallingFits) {
      triangles.add(new int[] {a, b, c});
      triangles.add(new int[] {a, c, d});
    } else {
      triangles.add(new int[] {a, b, d});
      triangles.add(new int[] {b, c, d});
    }
  }

  private double turn(int a, int b, int c) {
    double[] p = parameters.get(a);
    double[] q = parameters.get(b);
    double[] r = parameters.get(c);
    return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  }

  private ShellMesh build() {
    int[] number = used();
    int count = 0;
    for (int k = 0; k < number.length; k++) {
      number[k] = number[k] > 0 ? count++ : -1;
    }
    double[] x = new double[3 * count];
    double[] n = new double[3 * count];
    double[] point = new double[3];
    double[] normal = new double[3];
    for (int k = 0; k < number.length; k++) {
      if (number[k] >= 0) {
        surface.at(parameters.get(k)[0], parameters.get(k)[1], point, normal);
        System.arraycopy(point, 0, x, 3 * number[k], 3);
        System.arraycopy(normal, 0, n, 3 * number[k], 3);
      }
    }
    int[] flat = Orientation.along(n, x, triangles, number);
    ShellMesh.Builder builder = ShellMesh.builder(x, n, new Topology(count, flat));
    addSets(builder, number);
    return builder.build();
  }

  private int[] used() {
    int[] used = new int[parameters.size()];
    for (int[] t : triangles) {
      for (int v : t) {
        used[v] = 1;
      }
    }
    return used;
  }

  private void addSets(ShellMesh.Builder builder, int[] number) {
    List<Integer> low = new ArrayList<>();
    List<Integer> high = new ArrayList<>();
    for (int i = 0; i < columns; i++) {
      low.add(number[vertex(i, 0)]);
      high.add(number[vertex(i, options.second())]);
    }
    builder.vertexSet("side_low", low).vertexSet("side_high", high);
    if (surface.closed()) {
      return;
    }
    List<Integer> start = new ArrayList<>();
    List<Integer> end = new ArrayList<>();
    for (int j = 0; j <= options.second(); j++) {
      start.add(number[vertex(0, j)]);
      end.add(number[vertex(options.first(), j)]);
    }
    builder.vertexSet("start", start).vertexSet("end", end);
    builder.vertexSet("start_low", low.subList(0, 1)).vertexSet("start_high", high.subList(0, 1));
    builder.vertexSet("end_low", low.subList(columns - 1, columns));
    builder.vertexSet("end_high", high.subList(columns - 1, columns));
  }
}
