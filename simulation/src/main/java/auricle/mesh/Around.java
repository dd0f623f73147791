package auricle.mesh;

/**
 * The range of the angle about the z axis, from the x axis.
 *
 * @param from rad
 * @param to rad
 * @param slit whether a full turn is left open along the line where it begins
 */
public record Around(double from, double to, boolean slit) {
  /** A full turn, closed. */
  public static Around full() {
    return new Around(0, 2 * Math.PI, false);
  }

  /** Whether the surface closes on itself. */
  public boolean closed() {
    return !slit && Math.abs(Math.abs(to - from) - 2 * Math.PI) < 1e-9;
  }

  ParametricSurface turn(Meridian meridian, boolean pointAtLow, boolean pointAtHigh) {
    return new ParametricSurface() {
      @Override
      public void at(double s, double t, double[] point, double[] normal) {
        double[] m = new double[4];
        meridian.at(t, m);
        if ((pointAtLow && t == 0) || (pointAtHigh && t == 1)) {
          // the side normals of all directions meet here: their mean is along the axis
          m[2] = 0;
          m[3] = Math.signum(m[3]);
        }
        double a = from + s * (to - from);
        Surfaces.set(point, m[0] * Math.cos(a), m[0] * Math.sin(a), m[1]);
        Surfaces.set(normal, m[2] * Math.cos(a), m[2] * Math.sin(a), m[3]);
      }

      @Override
      public boolean closed() {
        return Around.this.closed();
      }

      @Override
      public boolean pointAtLow() {
        return pointAtLow;
      }

      @Override
      public boolean pointAtHigh() {
        return pointAtHigh;
      }
    };
  }
}
