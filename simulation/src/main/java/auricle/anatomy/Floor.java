package auricle.anatomy;

/**
 * The floor of the bowl as a height over the lateral view: slightly cupped, with the crus helicis,
 * the ridge that runs in from the root of the helix and fades behind the middle.
 */
final class Floor {
  /** Height of the mid-surface of the floor: half the thickness of cartilage and skin, mm. */
  static final double BED = 2;

  private static final double RIDGE_HEIGHT = 4.2;
  private static final double HALF_WIDTH = 3.5;
  private static final double CUP = 1.3 / (7 * 7);
  private static final double REACH = 14;
  private final double rootU;
  private final double rootV;
  private final double cos;
  private final double sin;

  Floor(PlanForm form) {
    rootU = form.value(Form.FOOT_U, 0);
    rootV = form.value(Form.FOOT_V, 0);
    double heading = Math.toRadians(form.value(Form.OUT_DEG, 0));
    cos = -Math.cos(heading);
    sin = -Math.sin(heading);
  }

  /** Height of the mid-surface above the mastoid plane, mm, at a point of the lateral view. */
  double height(double u, double v) {
    double along = (u - rootU) * cos + (v - rootV) * sin;
    double across = (v - rootV) * cos - (u - rootU) * sin;
    double fade = Steps.fall(along / REACH);
    double side = across / HALF_WIDTH;
    return BED + CUP * (u * u + v * v) + RIDGE_HEIGHT * fade * Math.exp(-side * side);
  }

  /** Slope of the floor towards a heading, rad. */
  double slope(double u, double v, double heading) {
    double step = 1e-4;
    double du = step * Math.cos(heading);
    double dv = step * Math.sin(heading);
    return Math.atan2(height(u + du, v + dv) - height(u - du, v - dv), 2 * step);
  }
}
