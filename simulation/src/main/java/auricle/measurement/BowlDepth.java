package auricle.measurement;

import auricle.anatomy.Chart;

/**
 * Depth of the conchal bowl, as a depth gauge reads it that is laid on the antihelix at mid-height
 * and points at the head: the lateral distance from the deepest place of the floor to the crest of
 * the antihelix at that height.
 *
 * <p>The deepest place is read softly, as in {@link Ridge}: a mean weighted by exp(−x/τ), τ = 0.1
 * mm.
 */
final class BowlDepth {
  private static final double SOFTNESS = 0.1;
  private final SampleBlock floor;

  BowlDepth(SamplePlan plan) {
    floor = plan.even(new Stations(0.4, 0.8, 9), 0.04, Chart.FOOT, 5);
  }

  /**
   * The depth, mm.
   *
   * @param crest most lateral line of the antihelix, x, y, z a point, mm
   * @param z mid-height, mm
   */
  double depth_mm(double[] points, double[] crest, double z) {
    return HeightFit.at(crest, z)[0] - deepest(points);
  }

  private double deepest(double[] p) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = floor.at(0, 0); at < floor.at(floor.stations(), 0); at += 3) {
      least = Math.min(least, p[at]);
    }
    double sum = 0;
    double mean = 0;
    for (int at = floor.at(0, 0); at < floor.at(floor.stations(), 0); at += 3) {
      double w = Math.exp((least - p[at]) / SOFTNESS);
      sum += w;
      mean += w * p[at];
    }
    return mean / sum;
  }
}
