package auricle.fitting;

import auricle.measurement.Figure;

/**
 * How well one measurement is met.
 *
 * @param figure which
 * @param wanted the value given, in its unit
 * @param reached the value that the fitted ear has
 */
public record FitResidual(Figure figure, double wanted, double reached) {
  private static final double DISTANCE = 0.5;
  private static final double ANGLE = 2;

  /** Largest difference that counts as met: 0.5 mm or 2 deg. */
  public double tolerance() {
    return tolerance(figure);
  }

  static double tolerance(Figure figure) {
    return figure.unit().equals("deg") ? ANGLE : DISTANCE;
  }

  /** Reached less wanted as a share of the tolerance. */
  public double share() {
    return (reached - wanted) / tolerance();
  }

  /** Whether it is met. */
  public boolean met() {
    return Math.abs(share()) <= 1;
  }
}
