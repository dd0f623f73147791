package auricle.mesh;

import auricle.geometry.Vectors;

/**
 * Surfaces that can be meshed; lengths in mm, angles in rad. First parameter s, second t.
 *
 * <p>Surfaces of revolution turn about the z axis: s runs around, t along the profile.
 */
public final class Surfaces {
  /** Sides that meet at a smaller angle than this run along one line. */
  private static final double ALONG_ONE_LINE = 1e-9;

  /** How far beside a corner, as a share of the way to the middle. */
  private static final double BESIDE = 1e-4;

  private Surfaces() {}

  /** Parallelogram from the origin: s along x, t along the other side; normal +z. */
  public static ParametricSurface parallelogram(double length, double width, double angle) {
    return (s, t, p, n) -> {
      set(p, length * s + width * Math.cos(angle) * t, width * Math.sin(angle) * t, 0);
      set(n, 0, 0, 1);
    };
  }

  /** Strip along x, y = 0 … width, twisted about the line y = width / 2, z = 0. */
  public static ParametricSurface twistedStrip(double length, double width, double twist) {
    return (s, t, p, n) -> {
      double a = twist * s;
      double r = width * (t - 0.5);
      set(p, length * s, width / 2 + r * Math.cos(a), r * Math.sin(a));
      double rate = twist / length * r;
      // d/ds = (1, −rate sin, rate cos), d/dt = (0, cos, sin)
      unit(n, -rate, -Math.sin(a), Math.cos(a));
    };
  }

  /**
   * Bilinear surface between four corners in order around it: c0 (s=t=0), c1 (s=1), c2, c3 (t=1).
   * At a corner of 180 deg, where it has no normal, that of the place beside it is taken.
   */
  public static ParametricSurface bilinear(double[] corners) {
    double[] c = corners.clone();
    return (s, t, p, n) -> {
      for (int k = 0; k < 3; k++) {
        p[k] =
            (1 - t) * (c[k] + s * (c[3 + k] - c[k])) + t * (c[9 + k] + s * (c[6 + k] - c[9 + k]));
      }
      if (!bilinearNormal(c, s, t, n)) {
        bilinearNormal(c, s + BESIDE * (0.5 - s), t + BESIDE * (0.5 - t), n);
      }
    };
  }

  /** Whether there is a normal. */
  private static boolean bilinearNormal(double[] c, double s, double t, double[] n) {
    double[] ds = new double[3];
    double[] dt = new double[3];
    for (int k = 0; k < 3; k++) {
      ds[k] = (1 - t) * (c[3 + k] - c[k]) + t * (c[6 + k] - c[9 + k]);
      dt[k] = (1 - s) * (c[9 + k] - c[k]) + s * (c[6 + k] - c[3 + k]);
    }
    double[] across = Vectors.cross(ds, dt);
    unit(n, across[0], across[1], across[2]);
    double size = Math.max(Vectors.dot(ds, ds), Vectors.dot(dt, dt));
    return Vectors.norm(across) > ALONG_ONE_LINE * size;
  }

  /** Cylinder, normal outward. */
  public static ParametricSurface cylinder(double radius, double length, Around around) {
    return around.turn((t, m) -> Meridian.set(m, radius, length * t, 1, 0), false, false);
  }

  /** Part of a sphere: t from one polar angle (from +z) to another; normal outward. */
  public static ParametricSurface sphere(
      double radius, double polarAtLow, double polarAtHigh, Around around) {
    Meridian meridian =
        (t, m) -> {
          double a = polarAtLow + t * (polarAtHigh - polarAtLow);
          Meridian.set(m, radius * Math.sin(a), radius * Math.cos(a), Math.sin(a), Math.cos(a));
        };
    return around.turn(meridian, isPole(polarAtLow), isPole(polarAtHigh));
  }

  private static boolean isPole(double angle) {
    return Math.abs(Math.sin(angle)) < 1e-12;
  }

  /** Flat ring in z = 0, t outward, normal +z; an inner radius of 0 makes a disc. */
  public static ParametricSurface annulus(double inner, double outer, Around around) {
    return around.turn(
        (t, m) -> Meridian.set(m, inner + t * (outer - inner), 0, 0, 1), inner == 0, false);
  }

  /** Cone or frustum, t upwards, normal outward. */
  public static ParametricSurface cone(double lower, double upper, double height, Around around) {
    double slant = Math.hypot(height, upper - lower);
    return around.turn(
        (t, m) ->
            Meridian.set(
                m,
                lower + t * (upper - lower),
                height * t,
                height / slant,
                (lower - upper) / slant),
        lower == 0,
        upper == 0);
  }

  static void set(double[] v, double x, double y, double z) {
    v[0] = x;
    v[1] = y;
    v[2] = z;
  }

  static void unit(double[] v, double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    set(v, x / length, y / length, z / length);
  }
}
