package auricle.report.picture;

import auricle.measurement.Figure;
import auricle.measurement.Measures;
import java.util.Map;

/**
 * The ear at one time after the operation, for a chart over time.
 *
 * @param days after the threads were tied
 * @param measures at that time
 * @param spread where the middle 80 % of sampled tissues lie, by figure; empty if none were sampled
 */
public record CoursePoint(double days, Measures measures, Map<Figure, Spread> spread) {
  /** Keeps its own copy of the spread. */
  public CoursePoint {
    spread = Map.copyOf(spread);
  }

  /**
   * A band of values.
   *
   * @param low tenth percentile
   * @param high ninetieth percentile
   */
  public record Spread(double low, double high) {}

  /** A short name of the time: 3 d, 1 wk, 6 mo. */
  String name() {
    if (days <= 0) {
      return "tied";
    }
    if (days < 6.5) {
      return Math.max(1, Math.round(days)) + " d";
    }
    return days < 27 ? Math.round(days / 7) + " wk" : Math.round(days * 12 / 365) + " mo";
  }
}
