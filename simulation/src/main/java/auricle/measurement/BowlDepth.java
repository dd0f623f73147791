package auricle.measurement;

import auricle.anatomy.Chart;

/**
 * Depth of the conchal bowl: the greatest distance of its floor from the plane of its rim.
 *
 * <p>The rim is the crest of the antihelix from the inferior crus to the antitragus and the free
 * edge of the tragus, which close the bowl behind and in front; its plane is the one that leaves
 * the least squares of lateral distances. The deepest point of the floor is read softly ({@link
 * Ridge} says how), τ = 0.1 mm.
 */
final class BowlDepth {
  private static final double SOFTNESS = 0.1;
  private final SampleBlock back;
  private final SampleBlock front;
  private final SampleBlock floor;

  BowlDepth(SamplePlan plan) {
    back = plan.even(new Stations(0.45, 0.92, 24), Chart.FOLD, Chart.FOLD, 1);
    front = plan.even(new Stations(1.12, 1.19, 8), Chart.FOLD, Chart.FOLD, 1);
    floor = plan.even(new Stations(0, 1.2, 25), 0.04, Chart.FOOT, 5);
  }

  /** The depth, mm. */
  double depth_mm(double[] points) {
    double[][] normal = new double[3][4];
    add(normal, back, points);
    add(normal, front, points);
    double[] plane = solved(normal);
    return deepest(plane, points) / Math.sqrt(1 + plane[1] * plane[1] + plane[2] * plane[2]);
  }

  /** Each of the two sides of the rim counts as much as the other, whatever its samples. */
  private static void add(double[][] normal, SampleBlock block, double[] p) {
    for (int k = 0; k < block.stations(); k++) {
      int at = block.at(k, 0);
      double[] row = {1, p[at + 1], p[at + 2], p[at]};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 4; c++) {
          normal[r][c] += row[r] * row[c] / block.stations();
        }
      }
    }
  }

  private static double[] solved(double[][] m) {
    for (int p = 0; p < 3; p++) {
      for (int r = 0; r < 3; r++) {
        double factor = r == p ? 0 : m[r][p] / m[p][p];
        for (int c = p; c < 4; c++) {
          m[r][c] -= factor * m[p][c];
        }
      }
    }
    return new double[] {m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]};
  }

  private double deepest(double[] plane, double[] p) {
    double most = Double.NEGATIVE_INFINITY;
    for (int at = floor.at(0, 0); at < floor.at(floor.stations(), 0); at += 3) {
      most = Math.max(most, under(plane, p, at));
    }
    double sum = 0;
    double mean = 0;
    for (int at = floor.at(0, 0); at < floor.at(floor.stations(), 0); at += 3) {
      double w = Math.exp((under(plane, p, at) - most) / SOFTNESS);
      sum += w;
      mean += w * under(plane, p, at);
    }
    return mean / sum;
  }

  private static double under(double[] plane, double[] p, int at) {
    return plane[0] + plane[1] * p[at + 1] + plane[2] * p[at + 2] - p[at];
  }
}
