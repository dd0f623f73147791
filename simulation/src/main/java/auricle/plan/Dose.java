package auricle.plan;

/**
 * One number of an operation that can be turned: its place among what is allowed, and the step by
 * which a control changes it.
 *
 * @param key name in files, with its unit: {@code depth_fraction}
 * @param label in plain words, for tables and controls
 * @param unit as it is printed: mm, N, %, days, or empty
 * @param value at present, in the unit
 * @param low least value allowed
 * @param high greatest value allowed
 * @param step by which a control changes it
 * @param reason why the bounds are where they are
 */
public record Dose(
    String key,
    String label,
    String unit,
    double value,
    double low,
    double high,
    double step,
    String reason) {

  /** Whether the value is a number within the bounds. */
  public boolean allowed() {
    return value >= low && value <= high;
  }

  /** The nearest value that is allowed; the least one for what is not a number. */
  public double nearestAllowed() {
    return value >= low ? Math.min(value, high) : low;
  }
}
