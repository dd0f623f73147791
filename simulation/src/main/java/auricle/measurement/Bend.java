package auricle.measurement;

import auricle.geometry.Vectors;

/** How sharply three points of a line bend: the circle through them (Menger's curvature). */
final class Bend {
  private Bend() {}

  /**
   * Radius of the circle through three points of an array, mm; infinite where they are in line.
   *
   * @param a index of the x coordinate of the first point
   * @param b of the middle one
   * @param c of the last
   */
  static double radius_mm(double[] points, int a, int b, int c) {
    double[] p = Vectors.at(points, b);
    double[] first = Vectors.subtract(Vectors.at(points, a), p);
    double[] last = Vectors.subtract(Vectors.at(points, c), p);
    double[] across = Vectors.subtract(last, first);
    double area = Vectors.norm(Vectors.cross(first, last));
    return Vectors.norm(first) * Vectors.norm(last) * Vectors.norm(across) / (2 * area);
  }
}
