package auricle.anatomy;

/**
 * From the ear's own axes in lateral view (u forwards across, v upwards along the long axis, normal
 * size) to the ear frame.
 *
 * <pre>
 *   U = u W/W0,  V = v H/H0,   y = U cos i − V sin i,   z = U sin i + V cos i,   x = m x0,   m = √(W/W0 · H/H0)
 * </pre>
 *
 * <p>W, H: width and height knobs with normal values W0, H0, mm; i: inclination, the long axis
 * turns backwards; x0: distance from the mastoid plane at normal size, mm.
 */
final class LateralView {
  private final double across;
  private final double along;
  private final double size;
  private final double cos;
  private final double sin;

  LateralView(ShapeParameters shape) {
    across = shape.value(ShapeKnob.WIDTH) / ShapeKnob.WIDTH.normal();
    along = shape.value(ShapeKnob.HEIGHT) / ShapeKnob.HEIGHT.normal();
    size = Math.sqrt(across * along);
    double inclination = Math.toRadians(shape.value(ShapeKnob.INCLINATION));
    cos = Math.cos(inclination);
    sin = Math.sin(inclination);
  }

  /** Size of the auricle as a multiple of the normal one. */
  double size() {
    return size;
  }

  /** A vector (u, v, lateral) in the ear frame. */
  double[] vector(double u, double v, double lateral) {
    double a = across * u;
    double b = along * v;
    return new double[] {size * lateral, a * cos - b * sin, a * sin + b * cos};
  }

  /** A point; the floor's bed keeps its height whatever the size. */
  double[] point(double u, double v, double lateral) {
    double[] p = vector(u, v, lateral - Floor.BED);
    p[0] += Floor.BED;
    return p;
  }
}
