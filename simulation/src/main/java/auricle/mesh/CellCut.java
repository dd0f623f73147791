package auricle.mesh;

import java.util.ArrayList;
import java.util.List;

/** Cuts the cells between rows of as many vertices each. */
final class CellCut {
  private final ParametricSurface surface;
  private final GridOptions options;
  private final GridRows rows;
  private final List<int[]> triangles = new ArrayList<>();

  private CellCut(ParametricSurface surface, GridOptions options, GridRows rows) {
    this.surface = surface;
    this.options = options;
    this.rows = rows;
  }

  /** The triangles; middles of crossed cells are added to the rows' parameters. */
  static List<int[]> triangles(ParametricSurface surface, GridOptions options, GridRows rows) {
    CellCut cut = new CellCut(surface, options, rows);
    for (int j = 0; j < options.second(); j++) {
      for (int i = 0; i < options.first(); i++) {
        cut.cut(i, j);
      }
    }
    return cut.triangles;
  }

  private void cut(int i, int j) {
    int a = rows.vertex(i, j);
    int b = rows.vertex(i + 1, j);
    int c = rows.vertex(i + 1, j + 1);
    int d = rows.vertex(i, j + 1);
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

  private boolean wraps(int i) {
    return surface.closed() && i == options.first() - 1;
  }

  private void cross(int i, int a, int b, int c, int d) {
    List<double[]> parameters = rows.parameters();
    double s = wraps(i) ? 0.5 : 0;
    double t = 0;
    for (int k : new int[] {a, b, c, d}) {
      s += parameters.get(k)[0] / 4;
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
    // a shifted cell may be concave: then only one diagonal lies inside it
    boolean risingFits = wraps(i) || (turn(a, b, c) > 0 && turn(a, c, d) > 0);
    boolean fallingFits = wraps(i) || (turn(a, b, d) > 0 && turn(b, c, d) > 0);
    if (rising ? risingFits || !fallingFits : risingFits && !fallingFits) {
      triangles.add(new int[] {a, b, c});
      triangles.add(new int[] {a, c, d});
    } else {
      triangles.add(new int[] {a, b, d});
      triangles.add(new int[] {b, c, d});
    }
  }

  private double turn(int a, int b, int c) {
    double[] p = rows.parameters().get(a);
    double[] q = rows.parameters().get(b);
    double[] r = rows.parameters().get(c);
    return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  }
}
