package auricle.measurement;

/**
 * A straight line along which an angle is read, in the ear frame.
 *
 * @param name which: {@code wall_leg_upper}, {@code scapha_leg_upper} and the same with {@code
 *     middle} are the legs of the scapha-conchal angle, from the inner to the outer end; {@code
 *     auriculocephalic} goes from the opening of the ear canal to the rim at mid-height
 * @param from lateral, anterior, superior place of its start, mm
 * @param to of its end, mm
 */
public record SightLine(String name, End from, End to) {
  /**
   * An end.
   *
   * @param lateral_mm from the mastoid plane
   * @param anterior_mm towards the face
   * @param superior_mm upwards
   */
  public record End(double lateral_mm, double anterior_mm, double superior_mm) {
    static End of(double[] p) {
      return new End(p[0], p[1], p[2]);
    }
  }

  static SightLine of(String name, double[] from, double[] to) {
    return new SightLine(name, End.of(from), End.of(to));
  }
}
