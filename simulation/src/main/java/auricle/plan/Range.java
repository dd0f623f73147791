package auricle.plan;

/**
 * Where a measurement is wanted, and who says so.
 *
 * @param low least value wanted, in the unit of the measurement
 * @param high greatest value wanted
 * @param source who says so: author and year, or what else it rests on
 * @param confidence how sure that is: seen, 2nd, memory, derived, practice, convention (our own
 *     choice) or given (by the user)
 */
public record Range(double low, double high, String source, String confidence) {

  /** A range that the user asks for. */
  public static Range of(double low, double high) {
    return new Range(low, high, "given in the scenario", "given");
  }

  /** Whether a value lies in it, ends included. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /** How far a value lies outside: 0 within, + above, − below; NaN for NaN. */
  public double beyond(double value) {
    return value > high ? value - high : value < low ? value - low : 0 * value;
  }

  /** Its middle. */
  public double middle() {
    return (low + high) / 2;
  }
}
