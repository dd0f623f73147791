package auricle.analysis;

/**
 * A symmetric tensor in the plane of a surface.
 *
 * @param xx first normal component
 * @param yy second normal component
 * @param xy shear component of the tensor (half of an engineering shear strain)
 */
record Plane(double xx, double yy, double xy) {
  /** The same tensor in axes turned anticlockwise by an angle, rad. */
  Plane turned(double angle) {
    double mean = (xx + yy) / 2;
    double half = (xx - yy) / 2;
    double c = Math.cos(2 * angle);
    double s = Math.sin(2 * angle);
    return new Plane(mean + half * c + xy * s, mean - half * c - xy * s, xy * c - half * s);
  }

  /** One number of it. */
  double component(Probe.Component component) {
    double mean = (xx + yy) / 2;
    double radius = Math.hypot((xx - yy) / 2, xy);
    return switch (component) {
      case ALONG -> xx;
      case ACROSS -> yy;
      case SHEAR -> xy;
      case MAJOR -> mean + radius;
      case MINOR -> mean - radius;
      case VON_MISES -> Math.sqrt(xx * xx - xx * yy + yy * yy + 3 * xy * xy);
    };
  }
}
