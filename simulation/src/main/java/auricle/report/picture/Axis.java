package auricle.report.picture;

import java.util.ArrayList;
import java.util.List;

/** A straight axis with round ticks. */
final class Axis {
  private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};
  private static final int MOST_TICKS = 8;

  private final double low;
  private final double high;
  private final double step;
  private final double start;
  private final double end;

  /**
   * @param low least value
   * @param high greatest value, above the least
   * @param start place on the page of the least value
   * @param end place on the page of the greatest value
   */
  Axis(double low, double high, double start, double end) {
    this.step = step(high - low);
    this.low = step * Math.floor(low / step + 1e-9);
    this.high = step * Math.ceil(high / step - 1e-9);
    this.start = start;
    this.end = end;
  }

  /** An axis over a range, wider if values need it. */
  static Axis around(double low, double high, List<Double> values, double start, double end) {
    double least = low;
    double most = high;
    for (double v : values) {
      if (Double.isFinite(v)) {
        least = Math.min(least, v);
        most = Math.max(most, v);
      }
    }
    return new Axis(least, most, start, end);
  }

  private static double step(double span) {
    for (double s : STEPS) {
      if (span / s <= MOST_TICKS) {
        return s;
      }
    }
    return span / MOST_TICKS;
  }

  /** Place of a value on the page. */
  double at(double value) {
    return start + (value - low) / (high - low) * (end - start);
  }

  /** Values of the ticks, ascending. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; low + i * step <= high + 1e-9 * step; i++) {
      ticks.add(low + i * step);
    }
    return ticks;
  }
}
