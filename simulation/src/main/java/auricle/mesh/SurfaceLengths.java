package auricle.mesh;

import auricle.geometry.Vectors;

/** Lengths of lines on a parametric surface, mm, by chords. */
final class SurfaceLengths {
  private static final int STEPS = 64;

  private SurfaceLengths() {}

  /** Length of the line t = const, from s = 0 to 1. */
  static double alongS(ParametricSurface surface, double t) {
    return length(surface, 0, t, 1, t);
  }

  /** Length of the line s = const between two values of t. */
  static double alongT(ParametricSurface surface, double s, double from, double to) {
    return length(surface, s, from, s, to);
  }

  private static double length(
      ParametricSurface surface, double s0, double t0, double s1, double t1) {
    double sum = 0;
    double[] from = point(surface, s0, t0);
    for (int i = 1; i <= STEPS; i++) {
      double part = (double) i / STEPS;
      double[] to = point(surface, s0 + part * (s1 - s0), t0 + part * (t1 - t0));
      sum += Vectors.norm(Vectors.subtract(to, from));
      from = to;
    }
    return sum;
  }

  private static double[] point(ParametricSurface surface, double s, double t) {
    double[] point = new double[3];
    surface.at(s, t, point, new double[3]);
    return point;
  }
}
