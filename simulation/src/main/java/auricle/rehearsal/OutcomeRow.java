package auricle.rehearsal;

/**
 * An outcome in patients and what the model gives for it.
 *
 * @param what in words
 * @param inFit whether the free parameter was set so that it is met
 * @param low least that is published, or the value itself where {@code inFit}
 * @param high most that is published
 * @param found by the model; NaN if it gives none
 * @param source of the published values
 * @param confidence in them
 */
public record OutcomeRow(
    String what,
    boolean inFit,
    double low,
    double high,
    double found,
    String source,
    String confidence) {
  /** Found value outside the published range by so much; 0 within. */
  public double residual() {
    return found < low ? found - low : Math.max(0, found - high);
  }
}
