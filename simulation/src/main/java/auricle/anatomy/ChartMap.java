package auricle.anatomy;

import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.List;

/**
 * The mesh laid out flat: around and across as polar coordinates, across as radius and around as
 * angle. It finds the triangle at a place.
 */
final class ChartMap {
  private static final int BINS = 400;
  private final MeshVertices vertices;
  private final Topology topology;
  private final List<List<Integer>> bins = new ArrayList<>();

  ChartMap(MeshVertices vertices, Topology topology) {
    this.vertices = vertices;
    this.topology = topology;
    for (int i = 0; i < BINS; i++) {
      bins.add(new ArrayList<>());
    }
    for (int t = 0; t < topology.triangleCount(); t++) {
      sort(t);
    }
  }

  MeshVertices vertices() {
    return vertices;
  }

  double around(int vertex) {
    return vertices.around(vertex);
  }

  double across(int vertex) {
    return vertices.across(vertex);
  }

  private void sort(int t) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      int v = topology.vertex(t, i);
      double a = nearest(vertices.around(v), around(topology.vertex(t, 0)));
      boolean middle = vertices.across(v) == 0;
      low = Math.min(low, middle ? a - PlanForm.PERIOD : a);
      high = Math.max(high, middle ? a + PlanForm.PERIOD : a);
    }
    int first = (int) Math.floor(low / PlanForm.PERIOD * BINS) - 1;
    int last = Math.min(first + BINS - 1, (int) Math.ceil(high / PlanForm.PERIOD * BINS) + 1);
    for (int i = first; i <= last; i++) {
      bins.get(Math.floorMod(i, BINS)).add(t);
    }
  }

  /** The same angle, moved by whole turns to lie nearest to another. */
  private static double nearest(double around, double other) {
    return around - PlanForm.PERIOD * Math.rint((around - other) / PlanForm.PERIOD);
  }

  /** Place (around, across) of a triangle's centroid; around in 0 … PERIOD. */
  double[] centroid(int t) {
    double first = around(topology.vertex(t, 0));
    double a = 0;
    double w = 0;
    for (int i = 0; i < 3; i++) {
      a += nearest(around(topology.vertex(t, i)), first) / 3;
      w += across(topology.vertex(t, i)) / 3;
    }
    return new double[] {a - PlanForm.PERIOD * Math.floor(a / PlanForm.PERIOD), w};
  }

  /** Middle of a triangle's span around and across: the same for both halves of a cell. */
  double[] middle(int t) {
    double first = around(topology.vertex(t, 0));
    double[] low = {first, across(topology.vertex(t, 0))};
    double[] high = low.clone();
    for (int i = 1; i < 3; i++) {
      double[] at = {nearest(around(topology.vertex(t, i)), first), across(topology.vertex(t, i))};
      for (int c = 0; c < 2; c++) {
        low[c] = Math.min(low[c], at[c]);
        high[c] = Math.max(high[c], at[c]);
      }
    }
    double a = (low[0] + high[0]) / 2;
    return new double[] {
      a - PlanForm.PERIOD * Math.floor(a / PlanForm.PERIOD), (low[1] + high[1]) / 2
    };
  }

  /** The spot at a place; across is held within 0 … 1. */
  SurfaceSpot spot(double around, double across) {
    double w = Math.min(1, Math.max(0, across));
    double a = around - PlanForm.PERIOD * Math.floor(around / PlanForm.PERIOD);
    List<Integer> near = bins.get(Math.min(BINS - 1, (int) (a / PlanForm.PERIOD * BINS)));
    Best best = new Best();
    near.stream().filter(t -> spans(t, w)).forEach(t -> best.offer(t, weights(t, a, w)));
    if (best.most < 0) {
      near.forEach(t -> best.offer(t, weights(t, a, w)));
    }
    return inside(best.spot);
  }

  /** The triangle that a place lies in, or least far outside. */
  private static final class Best {
    private SurfaceSpot spot = new SurfaceSpot(0, 0, 0);
    private double most = Double.NEGATIVE_INFINITY;

    private void offer(int t, double[] weights) {
      double least = Math.min(weights[0], Math.min(weights[1], weights[2]));
      if (least > most) {
        most = least;
        spot = new SurfaceSpot(t, weights[1], weights[2]);
      }
    }
  }

  /** Whether a place across may lie in a triangle: all but a few need not be looked at closer. */
  private boolean spans(int t, double across) {
    double low = 1;
    double high = 0;
    for (int i = 0; i < 3; i++) {
      double w = across(topology.vertex(t, i));
      low = Math.min(low, w);
      high = Math.max(high, w);
    }
    // chords of the floor's rings pass nearer to the middle than their ends
    return high <= Section.FOOT || across >= low && across <= high;
  }

  private static SurfaceSpot inside(SurfaceSpot spot) {
    double[] w = new double[3];
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      w[i] = Math.max(0, spot.weight(i));
      sum += w[i];
    }
    return new SurfaceSpot(spot.triangle(), w[1] / sum, w[2] / sum);
  }

  /** Barycentric weights: in (around, across) beyond the foot, in the plane on the floor. */
  private double[] weights(int t, double a, double w) {
    boolean floor = true;
    for (int i = 0; i < 3; i++) {
      floor &= across(topology.vertex(t, i)) <= Section.FOOT;
    }
    double[] x = new double[3];
    double[] y = new double[3];
    for (int i = 0; i < 3; i++) {
      double da = nearest(around(topology.vertex(t, i)), a) - a;
      double r = across(topology.vertex(t, i));
      double angle = 2 * Math.PI * da / PlanForm.PERIOD;
      x[i] = floor ? r * Math.cos(angle) - w : r - w;
      y[i] = floor ? r * Math.sin(angle) : da;
    }
    double area = twice(x, y, 0, 1) + twice(x, y, 1, 2) + twice(x, y, 2, 0);
    return new double[] {
      twice(x, y, 1, 2) / area, twice(x, y, 2, 0) / area, twice(x, y, 0, 1) / area
    };
  }

  private static double twice(double[] x, double[] y, int i, int k) {
    return x[i] * y[k] - x[k] * y[i];
  }
}
