package auricle.measurement;

import auricle.anatomy.Chart;

/**
 * Depth of the sulcus behind the ear at mid-height: how far, along the mastoid plane, the posterior
 * face stands clear of the head from the bottom of the sulcus to the back of the rim.
 *
 * <pre>
 *   depth = ∫ c(x(s) − x_foot) (−dy/ds) ds,   c(g) = 1 / (1 + exp(−(g − 3 mm)/0.3 mm))
 * </pre>
 *
 * <p>over the profile from the foot of the bowl's wall outwards; x_foot is the lateral place of
 * that foot, which lies on the head, so that the sulcus begins where the ear is 3 mm clear of it.
 * That limit is this project's own convention: about two thicknesses of skin. Stations count by
 * their rim's distance from mid-height, as in {@link HeightFit}.
 */
final class Sulcus {
  private static final double CLEAR = 3;
  private static final double SOFTNESS = 0.3;
  private static final double SPREAD = 2.5;
  private static final double OUT = 0.92;
  private final SampleBlock block;

  Sulcus(SamplePlan plan) {
    block = plan.even(new Stations(0.45, 0.75, 25), Chart.FOOT, OUT, 30);
  }

  /**
   * The depth, mm.
   *
   * @param z mid-height, mm
   */
  double depth_mm(double[] points, double z) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int k = 0; k < block.stations(); k++) {
      nearest = Math.min(nearest, square(rim(points, k) - z));
    }
    double sum = 0;
    double mean = 0;
    for (int k = 0; k < block.stations(); k++) {
      double w = Math.exp((nearest - square(rim(points, k) - z)) / (2 * SPREAD * SPREAD));
      sum += w;
      mean += w * clear(points, k);
    }
    return mean / sum;
  }

  private double rim(double[] points, int station) {
    return points[block.at(station, block.across() - 1) + 2];
  }

  private double clear(double[] points, int station) {
    double foot = points[block.at(station, 0)];
    double length = 0;
    for (int i = 1; i < block.across(); i++) {
      int a = block.at(station, i - 1);
      int b = block.at(station, i);
      double gap = (points[a] + points[b]) / 2 - foot;
      length += (points[a + 1] - points[b + 1]) / (1 + Math.exp((CLEAR - gap) / SOFTNESS));
    }
    return length;
  }

  private static double square(double d) {
    return d * d;
  }
}
