package auricle.geometry;

import java.util.Arrays;

/**
 * Distance d from a point p to a vertex, a segment or a triangle (1, 2 or 3 corners), with first
 * and second derivatives by all coordinates.
 *
 * <p>With the closest point c = Σ β_i x_i, r = p − c and s = (1, −β), the envelope theorem gives
 * ∂d/∂z_k = s_k r/d for z = (p, x_0, x_1, …). The second derivative of ½ d² is what is left of s sᵀ
 * ⊗ I when β is eliminated over the active corners (those of the face, edge or corner that holds
 * c):
 *
 * <pre>
 *   ∂²(½ d²) = s sᵀ ⊗ I − Σ_ab (G⁻¹)_ab m_a m_bᵀ,   m_a[k] = s_k T_a + τ_ak r
 *   T_a = x_a − x_0,  G_ab = T_a · T_b,  τ_ak = +1 at corner a, −1 at corner 0
 * </pre>
 *
 * <p>d is once continuously differentiable where d &gt; 0 and the closest point is unique; the
 * second derivative jumps where the closest point passes from a face to an edge or to a corner.
 * Closest point after Ericson, Real-Time Collision Detection (2005), §5.1.5.
 */
public final class SimplexDistance {
  private final double[][] corners;
  private final double[] weights;
  private final int[] active;
  private final double[] r;
  private final double distance;

  /**
   * @param p the point, {@code double[3]}
   * @param corners one to three corners
   */
  public SimplexDistance(double[] p, double[]... corners) {
    this.corners = corners;
    this.weights = closest(p, corners);
    this.active = nonzero(weights);
    double[] away = p;
    for (int i : active) {
      away = Vectors.add(away, -weights[i], corners[i]);
    }
    this.r = away;
    this.distance = Vectors.norm(away);
  }

  private static int[] nonzero(double[] weights) {
    int[] places = new int[weights.length];
    int found = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        places[found++] = i;
      }
    }
    return Arrays.copyOf(places, found);
  }

  /** The distance, not negative. */
  public double distance() {
    return distance;
  }

  /** Barycentric weights of the closest point, one a corner; shared, not to be changed. */
  public double[] weights() {
    return weights;
  }

  /** Fills in ∂d/∂z, 3 (1 + corners) long: first the point, then the corners. Needs d &gt; 0. */
  public void gradient(double[] gradient) {
    for (int k = 0; k <= corners.length; k++) {
      for (int a = 0; a < 3; a++) {
        gradient[3 * k + a] = share(k) * r[a] / distance;
      }
    }
  }

  /** Fills in ∂²d/∂z², square, row by row, in the order of the gradient. Needs d &gt; 0. */
  public void hessian(double[] hessian) {
    int n = 3 * (corners.length + 1);
    Arrays.fill(hessian, 0, n * n, 0);
    for (int k = 0; k <= corners.length; k++) {
      for (int l = 0; l <= corners.length; l++) {
        double shares = share(k) * share(l) / distance;
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 3; b++) {
            double along = r[a] * r[b] / (distance * distance);
            hessian[(3 * k + a) * n + 3 * l + b] += shares * ((a == b ? 1 : 0) - along);
          }
        }
      }
    }
    subtractSliding(hessian, n);
  }

  private double share(int k) {
    return k == 0 ? 1 : -weights[k - 1];
  }

  /** The closest point slides along the active edge or face as the coordinates move. */
  private void subtractSliding(double[] hessian, int n) {
    int free = active.length - 1;
    if (free == 0) {
      return;
    }
    double[][] m = new double[free][n];
    double[][] tangent = new double[free][];
    for (int a = 0; a < free; a++) {
      tangent[a] = Vectors.subtract(corners[active[a + 1]], corners[active[0]]);
      for (int k = 0; k <= corners.length; k++) {
        double own = k == active[a + 1] + 1 ? 1 : k == active[0] + 1 ? -1 : 0;
        for (int c = 0; c < 3; c++) {
          m[a][3 * k + c] = share(k) * tangent[a][c] + own * r[c];
        }
      }
    }
    double[][] inverse = inverseGram(tangent);
    for (int a = 0; a < free; a++) {
      for (int b = 0; b < free; b++) {
        for (int i = 0; i < n; i++) {
          for (int j = 0; j < n; j++) {
            hessian[i * n + j] -= inverse[a][b] * m[a][i] * m[b][j] / distance;
          }
        }
      }
    }
  }

  private static double[][] inverseGram(double[][] t) {
    double g00 = Vectors.dot(t[0], t[0]);
    if (t.length == 1) {
      return new double[][] {{1 / g00}};
    }
    double g01 = Vectors.dot(t[0], t[1]);
    double g11 = Vectors.dot(t[1], t[1]);
    double det = g00 * g11 - g01 * g01;
    return new double[][] {{g11 / det, -g01 / det}, {-g01 / det, g00 / det}};
  }

  private static double[] closest(double[] p, double[][] x) {
    return switch (x.length) {
      case 1 -> new double[] {1};
      case 2 -> onSegment(p, x[0], x[1]);
      case 3 -> onTriangle(p, x[0], x[1], x[2]);
      default -> throw new IllegalArgumentException(x.length + " corners; expected 1 to 3");
    };
  }

  private static double[] onSegment(double[] p, double[] a, double[] b) {
    double[] t = Vectors.subtract(b, a);
    double along = Vectors.dot(Vectors.subtract(p, a), t) / Vectors.dot(t, t);
    double clamped = along > 0 ? Math.min(along, 1) : 0;
    return new double[] {1 - clamped, clamped};
  }

  private static double[] onTriangle(double[] p, double[] a, double[] b, double[] c) {
    double[] ab = Vectors.subtract(b, a);
    double[] ac = Vectors.subtract(c, a);
    double[] ap = Vectors.subtract(p, a);
    double[] bp = Vectors.subtract(p, b);
    double[] cp = Vectors.subtract(p, c);
    double d1 = Vectors.dot(ab, ap);
    double d2 = Vectors.dot(ac, ap);
    double d3 = Vectors.dot(ab, bp);
    double d4 = Vectors.dot(ac, bp);
    double d5 = Vectors.dot(ab, cp);
    double d6 = Vectors.dot(ac, cp);
    double va = d3 * d6 - d5 * d4;
    double vb = d5 * d2 - d1 * d6;
    double vc = d1 * d4 - d3 * d2;
    if (d1 <= 0 && d2 <= 0) {
      return new double[] {1, 0, 0};
    }
    if (d3 >= 0 && d4 <= d3) {
      return new double[] {0, 1, 0};
    }
    if (d6 >= 0 && d5 <= d6) {
      return new double[] {0, 0, 1};
    }
    if (vc <= 0 && d1 >= 0 && d3 <= 0) {
      return new double[] {-d3 / (d1 - d3), d1 / (d1 - d3), 0};
    }
    if (vb <= 0 && d2 >= 0 && d6 <= 0) {
      return new double[] {-d6 / (d2 - d6), 0, d2 / (d2 - d6)};
    }
    if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
      double w = (d4 - d3) / ((d4 - d3) + (d5 - d6));
      return new double[] {0, 1 - w, w};
    }
    double sum = va + vb + vc;
    return new double[] {va / sum, vb / sum, vc / sum};
  }
}
