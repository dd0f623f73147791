package auricle.analysis;

import java.util.List;

/**
 * Values that a probe should have, to be checked after a run.
 *
 * @param at place in the model file
 * @param probe name of the probe
 * @param points load factors (or values of another probe) and the values expected there
 * @param against name of the probe that the points are given over; empty: the load factor
 * @param relative tolerance relative to the value expected; 0 if none
 * @param ofLargest tolerance relative to the largest value of the table; 0 if none
 * @param absolute tolerance in the probe's unit; 0 if none
 * @param source where the values come from
 * @param confidence published, computed, common practice or from memory
 */
public record Expectation(
    String at,
    String probe,
    List<Point> points,
    String against,
    double relative,
    double ofLargest,
    double absolute,
    String source,
    String confidence) {
  /**
   * One expected value.
   *
   * @param abscissa load factor, or value of the other probe; NaN: the last step
   * @param value in the probe's unit
   */
  public record Point(double abscissa, double value) {}

  /** How far a value may be from what is expected: the widest of the given tolerances. */
  public double allowed(double expected) {
    double largest = points.stream().mapToDouble(p -> Math.abs(p.value())).max().orElse(0);
    return Math.max(absolute, Math.max(relative * Math.abs(expected), ofLargest * largest));
  }
}
