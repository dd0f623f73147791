package auricle.viewer.scene;

/**
 * A place in the ear frame.
 *
 * @param x_mm lateral, away from the head
 * @param y_mm anterior
 * @param z_mm superior
 */
public record Spot(double x_mm, double y_mm, double z_mm) {
  /** Distance to another place, mm. */
  public double distance(Spot other) {
    double dx = x_mm - other.x_mm;
    double dy = y_mm - other.y_mm;
    double dz = z_mm - other.z_mm;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  /** A place on the way to another: 0 here, 1 there. */
  public Spot towards(Spot other, double share) {
    return new Spot(
        x_mm + share * (other.x_mm - x_mm),
        y_mm + share * (other.y_mm - y_mm),
        z_mm + share * (other.z_mm - z_mm));
  }

  /** The place moved by so much. */
  public Spot plus(double dx_mm, double dy_mm, double dz_mm) {
    return new Spot(x_mm + dx_mm, y_mm + dy_mm, z_mm + dz_mm);
  }
}
