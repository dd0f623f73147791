package auricle.analysis;

/**
 * An expected value against the one computed.
 *
 * @param probe name of the probe
 * @param abscissa load factor, or value of the other probe; NaN for the last step
 * @param expected in the probe's unit
 * @param found NaN if no step gives it
 * @param allowed largest difference
 * @param source where the expected value comes from
 * @param confidence published, computed, common_practice or from_memory
 */
public record CheckResult(
    String probe,
    double abscissa,
    double expected,
    double found,
    double allowed,
    String source,
    String confidence) {
  /** Whether it is met; never if nothing was found. */
  public boolean met() {
    return Math.abs(found - expected) <= allowed;
  }
}
