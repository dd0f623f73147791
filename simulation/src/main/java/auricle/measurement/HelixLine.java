package auricle.measurement;

import auricle.anatomy.Chart;

/**
 * The helix as it is measured: the line of its most lateral points from the top over the back to
 * the end of the lobule, its top, its back and the lowest point of the lobule.
 */
final class HelixLine {
  private static final int ALONG = 3;
  private static final int BESIDE = 2;
  private static final int STATIONS = 65;
  private static final double TOP = 0.2;
  private static final double CAUDA_END = 0.85;
  private final Ridge lateral;
  private final Ridge top;
  private final Ridge back;
  private final Ridge bottom;

  HelixLine(SamplePlan plan) {
    lateral = new Ridge(plan.even(new Stations(TOP, 1, STATIONS), Chart.SCAPHA_END, 1, 16), 0, 1);
    top = new Ridge(plan.even(new Stations(0.1, 0.42, 30), Chart.SCAPHA_END, 1, 12), 2, 1);
    back = new Ridge(plan.even(new Stations(0.3, 0.75, 30), Chart.SCAPHA_END, 1, 12), 1, -1);
    bottom = new Ridge(plan.even(new Stations(0.85, 1.02, 20), Chart.SCAPHA_END, 1, 8), 2, -1);
  }

  /** The line, x, y, z a point, from the top downwards, mm. */
  double[] line(double[] points) {
    return lateral.line(points);
  }

  /** Height of the ear: lowest point of the lobule and top of the helix. */
  EarHeight height(double[] points) {
    return new EarHeight(bottom.extreme(points), top.extreme(points));
  }

  /** The backmost point of the helix, y, mm. */
  double back_mm(double[] points) {
    return back.extreme(points);
  }

  /**
   * Evenness of the rim from the top to the end of the cauda, over some 4 mm to either side. The
   * smallest radius is that of the mean curvature of five neighbouring places, some 5 mm: exact on
   * a circle, and free of the corners of a coarse mesh; kinks are read place by place.
   */
  Evenness evenness(double[] line, EarHeight height) {
    double share = (CAUDA_END - TOP) / (1 - TOP);
    int places = (int) Math.round(share * (STATIONS - 1)) + 1 - 2 * ALONG;
    double[] radius = new double[places];
    for (int k = 0; k < places; k++) {
      radius[k] = Bend.radius_mm(line, 3 * k, 3 * (k + ALONG), 3 * (k + 2 * ALONG));
    }
    Evenness single = EvenLine.of(places, k -> radius[k], k -> level(line, k, height));
    Evenness mean =
        EvenLine.of(
            places - 2 * BESIDE, k -> mean(radius, k), k -> level(line, k + BESIDE, height));
    return new Evenness(mean.smallestRadius_mm(), mean.level_percent(), single.kinks());
  }

  private static double level(double[] line, int place, EarHeight height) {
    return height.percent(line[3 * (place + ALONG) + 2]);
  }

  /** Radius of the mean curvature of a place and its neighbours after it, mm. */
  private static double mean(double[] radius, int from) {
    int count = 2 * BESIDE + 1;
    double curvature = 0;
    for (int k = from; k < from + count; k++) {
      curvature += 1 / radius[k];
    }
    return count / curvature;
  }
}
