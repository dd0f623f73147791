package auricle.viewer.scene;

/**
 * Where the eye is: on a sphere around a point of the ear.
 *
 * @param around_deg angle from the side (0) towards the front (90) of the ear as drawn
 * @param up_deg angle above the horizontal, −89.9 to 89.9
 * @param distance_mm from the eye to the point looked at
 * @param right_mm the point's shift to the right of the picture
 * @param down_mm the point's shift downwards in the picture
 */
public record Orbit(
    double around_deg, double up_deg, double distance_mm, double right_mm, double down_mm) {
  private static final double STEEPEST_DEG = 89.9;
  private static final double NEAREST_MM = 40;
  private static final double FARTHEST_MM = 1200;

  /** Distance from which the whole ear and some of the head are seen. */
  public static final double HOME_MM = 235;

  /** The eye at a clinical view; the picture is not shifted. */
  public static Orbit at(ClinicalView view) {
    return new Orbit(view.around_deg(), view.up_deg(), HOME_MM, 0, 0);
  }

  /** Turned by so many degrees. */
  public Orbit turned(double around, double up) {
    double a = Math.IEEEremainder(around_deg + around, 360);
    double u = Math.max(-STEEPEST_DEG, Math.min(STEEPEST_DEG, up_deg + up));
    return new Orbit(a, u, distance_mm, right_mm, down_mm);
  }

  /** Farther by a factor above 1, nearer by one below; kept within what is useful. */
  public Orbit farther(double factor) {
    double d = Math.max(NEAREST_MM, Math.min(FARTHEST_MM, distance_mm * factor));
    return new Orbit(around_deg, up_deg, d, right_mm, down_mm);
  }

  /** Shifted in the plane of the picture, mm. */
  public Orbit shifted(double right, double down) {
    return new Orbit(around_deg, up_deg, distance_mm, right_mm + right, down_mm + down);
  }

  /** A view on the way to another: 0 here, 1 there; turns the shorter way. */
  public Orbit towards(Orbit other, double share) {
    double turn = Math.IEEEremainder(other.around_deg - around_deg, 360);
    return new Orbit(
        Math.IEEEremainder(around_deg + share * turn, 360),
        mix(up_deg, other.up_deg, share),
        mix(distance_mm, other.distance_mm, share),
        mix(right_mm, other.right_mm, share),
        mix(down_mm, other.down_mm, share));
  }

  private static double mix(double from, double to, double share) {
    return from + share * (to - from);
  }
}
