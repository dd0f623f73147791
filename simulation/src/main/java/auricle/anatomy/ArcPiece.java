package auricle.anatomy;

/**
 * A circular arc, or a straight line where it does not turn.
 *
 * @param start first point
 * @param length arc length, mm
 * @param turn change of slope over the whole arc, rad
 */
record ArcPiece(ProfilePoint start, double length, double turn) implements ProfilePiece {
  private static final double STRAIGHT = 1e-9;

  @Override
  public ProfilePoint at(double s) {
    double turned = length > 0 ? turn * s / length : 0;
    double mean = start.slope() + turned / 2;
    double chord = s * (Math.abs(turned) < STRAIGHT ? 1 : Math.sin(turned / 2) / (turned / 2));
    return new ProfilePoint(
        start.out() + chord * Math.cos(mean),
        start.lateral() + chord * Math.sin(mean),
        start.slope() + turned);
  }
}
