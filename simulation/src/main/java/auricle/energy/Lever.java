package auricle.energy;

import auricle.geometry.PlateFrame;
import auricle.geometry.Vectors;

/**
 * The direction in which a triangle holds a point off its plane: its unit normal n = N/|N|, N = (x_1
 * − x_0) × (x_2 − x_0), and, where the triangle is squashed to |N| under a bound δ,
 *
 * <pre>
 *   N/μ(|N|),   μ(r) = δ (3 + 6 s² − s⁴)/8,   s = r/δ
 * </pre>
 *
 * so that it shortens and turns over smoothly. A unit normal jumps from one side to the other there,
 * and so would the point: a force that pulls it would have no smooth energy, and no rest need be
 * stationary. μ has value, slope and curvature of r at δ: derivatives are continuous up to the
 * second.
 */
final class Lever {
  private final double[][] corners;
  private final double squashed;
  private final double[] product;
  private final double square;

  /**
   * @param squashed δ, twice an area; 0 for the unit normal everywhere
   */
  Lever(double[] x0, double[] x1, double[] x2, double squashed) {
    corners = new double[][] {x0, x1, x2};
    this.squashed = squashed;
    product = Vectors.cross(Vectors.subtract(x1, x0), Vectors.subtract(x2, x0));
    square = Vectors.dot(product, product);
  }

  /** Whether the direction is the unit normal. */
  private boolean full() {
    return !(square < squashed * squashed);
  }

  private PlateFrame frame() {
    return new PlateFrame(corners[0], corners[1], corners[2]);
  }

  /** The direction, of length one or less. */
  double[] direction() {
    return full() ? frame().normal() : Vectors.scale(1 / width(), product);
  }

  /** μ. */
  private double width() {
    double s = square / (squashed * squashed);
    return squashed * (3 + 6 * s - s * s) / 8;
  }

  /** dμ/d|N|². */
  private double widening() {
    double s = square / (squashed * squashed);
    return (6 - 2 * s) / (8 * squashed);
  }

  /**
   * Adds the derivative of the direction by the corners.
   *
   * @param factor that it is multiplied by
   * @param jacobian 3 × 9, row by row
   */
  void addJacobian(double factor, double[] jacobian) {
    if (full()) {
      addTips(factor, jacobian);
      return;
    }
    for (int a = 0; a < 3; a++) {
      double[] w = new double[3];
      w[a] = factor;
      double[] slope = slope(w);
      for (int i = 0; i < 3; i++) {
        double[] moved = Vectors.cross(side(i), slope);
        for (int b = 0; b < 3; b++) {
          jacobian[a * 9 + 3 * i + b] += moved[b];
        }
      }
    }
  }

  private void addTips(double factor, double[] jacobian) {
    PlateFrame frame = frame();
    for (int a = 0; a < 3; a++) {
      for (int i = 0; i < 3; i++) {
        for (int b = 0; b < 3; b++) {
          jacobian[a * 9 + 3 * i + b] += factor * frame.tip(i)[a] * frame.normal()[b];
        }
      }
    }
  }

  /** x_{i+1} − x_{i+2}: N changes by v × this as corner i moves by v. */
  private double[] side(int i) {
    return Vectors.subtract(corners[(i + 1) % 3], corners[(i + 2) % 3]);
  }

  /** Derivative of w · N/μ by N. */
  private double[] slope(double[] w) {
    double g = 1 / width();
    double along = Vectors.dot(w, product) * -2 * g * g * widening();
    return Vectors.add(Vectors.scale(g, w), along, product);
  }

  /**
   * Adds the second derivative of w · direction by the corners.
   *
   * @param hessian 9 × 9, row by row
   */
  void addCurvature(double[] w, double[] hessian) {
    if (full()) {
      frame().addNormalCurvature(w, hessian);
      return;
    }
    double[][] bend = bend(w);
    double[] slope = slope(w);
    for (int i = 0; i < 3; i++) {
      for (int b = 0; b < 3; b++) {
        double[] bent = image(bend, turned(b, side(i)));
        for (int k = 0; k < 3; k++) {
          double[] moved = Vectors.cross(side(k), bent);
          for (int c = 0; c < 3; c++) {
            hessian[(3 * i + b) * 9 + 3 * k + c] += moved[c] + product(slope, i, b, k, c);
          }
        }
      }
    }
  }

  /** Second derivative of w · N/μ by N. */
  private double[][] bend(double[] w) {
    double g = 1 / width();
    double m = widening();
    double first = -g * g * m;
    double second = 2 * g * g * g * m * m + g * g / (4 * squashed * squashed * squashed);
    double along = Vectors.dot(w, product);
    double[][] bend = new double[3][3];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        bend[a][b] =
            2 * first * (w[a] * product[b] + product[a] * w[b] + (a == b ? along : 0))
                + 4 * second * along * product[a] * product[b];
      }
    }
    return bend;
  }

  /** The unit vector of axis b × v. */
  private static double[] turned(int b, double[] v) {
    double[] axis = new double[3];
    axis[b] = 1;
    return Vectors.cross(axis, v);
  }

  private static double[] image(double[][] matrix, double[] v) {
    return new double[] {
      Vectors.dot(matrix[0], v), Vectors.dot(matrix[1], v), Vectors.dot(matrix[2], v)
    };
  }

  /** Second derivative of p · N by coordinate b of corner i and c of corner k. */
  private static double product(double[] p, int i, int b, int k, int c) {
    if (i == k || b == c) {
      return 0;
    }
    double sign = (k - i + 3) % 3 == 1 ? 1 : -1;
    double even = (c - b + 3) % 3 == 1 ? 1 : -1;
    return sign * even * p[3 - b - c];
  }
}
