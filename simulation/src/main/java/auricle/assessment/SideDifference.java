package auricle.assessment;

import auricle.measurement.Figure;

/**
 * A measurement on both ears.
 *
 * @param figure which
 * @param right value on the right ear, in its unit
 * @param left value on the left ear
 * @param limit largest difference accepted
 */
public record SideDifference(Figure figure, double right, double left, Limit limit) {
  /** Right less left, in the unit of the figure. */
  public double difference() {
    return right - left;
  }

  /** Whether the two are within the limit. */
  public boolean within() {
    return Math.abs(difference()) <= limit.value();
  }
}
