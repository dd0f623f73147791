package auricle.measurement;

import auricle.anatomy.Chart;
import java.util.Arrays;

/**
 * The helix as it is measured: the line of its most lateral points from the top over the back to
 * the end of the lobule, its top, its back and the lowest point of the lobule.
 */
final class HelixLine {
  private static final int ALONG = 3;
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

  /** Evenness of the rim from the top to the end of the cauda, over some 4 mm to either side. */
  Evenness evenness(double[] line, EarHeight height) {
    double share = (CAUDA_END - TOP) / (1 - TOP);
    int last = (int) Math.round(share * (STATIONS - 1));
    double[] rim = Arrays.copyOf(line, 3 * last + 3);
    return EvenLine.of(
        last + 1 - 2 * ALONG,
        k -> Bend.radius_mm(rim, 3 * k, 3 * (k + ALONG), 3 * (k + 2 * ALONG)),
        k -> height.percent(rim[3 * (k + ALONG) + 2]));
  }
}
