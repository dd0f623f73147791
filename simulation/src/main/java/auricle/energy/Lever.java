package auricle.energy;

import auricle.geometry.Vectors;

/**
 * The direction in which a triangle holds a point off its plane: N/μ(|N|) with N = (x_1 − x_0) ×
 * (x_2 − x_0) and μ the {@link RoundedLength} of it. That is the unit normal, unless the triangle
 * is squashed: there it gets shorter and turns over smoothly. A unit normal jumps from one side to
 * the other where a corner passes the opposite edge, and so would the point: a force that pulls it
 * would have no smooth energy, and no rest need be stationary.
 *
 * <p>Moving corner i by v changes N by v × (x_{i+1} − x_{i+2}).
 */
final class Lever {
  private final double[][] corners;
  private final double[] product;

  /** 1/μ, and its derivatives by |N|². */
  private final double inverse;

  private final double slope;
  private final double bend;

  /**
   * @param squashed |N|, twice an area, below which the triangle is squashed; 0: never
   */
  Lever(double[] x0, double[] x1, double[] x2, double squashed) {
    corners = new double[][] {x0, x1, x2};
    product = Vectors.cross(Vectors.subtract(x1, x0), Vectors.subtract(x2, x0));
    RoundedLength width = new RoundedLength(Vectors.dot(product, product), squashed);
    inverse = 1 / width.value();
    slope = -inverse * inverse * width.slope();
    bend = inverse * inverse * (2 * inverse * width.slope() * width.slope() - width.bend());
  }

  /** The direction, of length one or less. */
  double[] direction() {
    return Vectors.scale(inverse, product);
  }

  /**
   * Adds the derivative of the direction by the corners.
   *
   * @param factor that it is multiplied by
   * @param jacobian 3 × 9, row by row
   */
  void addJacobian(double factor, double[] jacobian) {
    for (int a = 0; a < 3; a++) {
      double[] w = new double[3];
      w[a] = factor;
      double[] force = force(w);
      for (int i = 0; i < 3; i++) {
        double[] moved = Vectors.cross(side(i), force);
        for (int b = 0; b < 3; b++) {
          jacobian[a * 9 + 3 * i + b] += moved[b];
        }
      }
    }
  }

  private double[] side(int i) {
    return Vectors.subtract(corners[(i + 1) % 3], corners[(i + 2) % 3]);
  }

  /** Derivative of w · N/μ by N. */
  private double[] force(double[] w) {
    double along = 2 * slope * Vectors.dot(w, product);
    return Vectors.add(Vectors.scale(inverse, w), along, product);
  }

  /**
   * Adds the second derivative of w · direction by the corners.
   *
   * @param hessian 9 × 9, row by row
   */
  void addCurvature(double[] w, double[] hessian) {
    double[] force = force(w);
    for (int i = 0; i < 3; i++) {
      for (int b = 0; b < 3; b++) {
        double[] bent = bent(w, turned(b, side(i)));
        for (int k = 0; k < 3; k++) {
          double[] moved = Vectors.cross(side(k), bent);
          for (int c = 0; c < 3; c++) {
            hessian[(3 * i + b) * 9 + 3 * k + c] += moved[c] + bilinear(force, i, b, k, c);
          }
        }
      }
    }
  }

  /** Change of the derivative of w · N/μ by N as N changes by v. */
  private double[] bent(double[] w, double[] v) {
    double wn = Vectors.dot(w, product);
    double vn = Vectors.dot(v, product);
    double along = 2 * slope * Vectors.dot(w, v) + 4 * bend * wn * vn;
    double[] sum = Vectors.add(Vectors.scale(2 * slope * vn, w), 2 * slope * wn, v);
    return Vectors.add(sum, along, product);
  }

  /** The unit vector of axis b × v. */
  private static double[] turned(int b, double[] v) {
    double[] axis = new double[3];
    axis[b] = 1;
    return Vectors.cross(axis, v);
  }

  /** Second derivative of p · N by coordinate b of corner i and c of corner k. */
  private static double bilinear(double[] p, int i, int b, int k, int c) {
    if (i == k || b == c) {
      return 0;
    }
    boolean after = (k - i + 3) % 3 == 1;
    boolean even = (c - b + 3) % 3 == 1;
    return after == even ? p[3 - b - c] : -p[3 - b - c];
  }
}
