package auricle.geometry;

/**
 * Unit normal of a triangle with its first and second derivatives by the nine corner coordinates.
 *
 * <p>With n the unit normal (corners 0, 1, 2 anticlockwise seen against n) and q_i = ν_i / h_i,
 * where ν_i is the outward in-plane unit normal of the edge opposite corner i and h_i the height
 * over it,
 *
 * <pre>
 *   dn           = Σ_i q_i (n · dx_i)
 *   d²(w · n)_ik = (w·q_k) n q_iᵀ + (w·q_i) q_k nᵀ − (w·n)(q_i·q_k) n nᵀ
 * </pre>
 *
 * for a fixed vector w: lifting a corner tips the normal away from it; q_i is minus the gradient of
 * the barycentric coordinate i. Derived from n·(x_j − x_k) = 0 and q_i·(x_j − x_k) = δ_ik − δ_ij.
 * For a triangle of no area everything is NaN.
 */
public final class PlateFrame {
  private final double[] normal;
  private final double[][] tip;
  private final double area;

  /** Frame of the triangle with the given corners, {@code double[3]} each. */
  public PlateFrame(double[] x0, double[] x1, double[] x2) {
    double[] product = Vectors.cross(Vectors.subtract(x1, x0), Vectors.subtract(x2, x0));
    double twiceArea = Vectors.norm(product);
    area = twiceArea / 2;
    normal = Vectors.scale(1 / twiceArea, product);
    tip =
        new double[][] {
          tip(x1, x2, twiceArea), tip(x2, x0, twiceArea), tip(x0, x1, twiceArea),
        };
  }

  private double[] tip(double[] from, double[] to, double twiceArea) {
    return Vectors.scale(1 / twiceArea, Vectors.cross(Vectors.subtract(to, from), normal));
  }

  /** Area, length². */
  public double area() {
    return area;
  }

  /** The unit normal n; shared, not to be changed. */
  public double[] normal() {
    return normal;
  }

  /** q_i, 1/length: the change of the normal as corner i is lifted; shared, not to be changed. */
  public double[] tip(int corner) {
    return tip[corner];
  }

  /**
   * Adds the second derivative of w · n by the corner coordinates.
   *
   * @param w any fixed vector
   * @param hessian 9 × 9, row by row, place 3 i + a for coordinate a of corner i
   */
  public void addNormalCurvature(double[] w, double[] hessian) {
    double wn = Vectors.dot(w, normal);
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < 3; k++) {
        double wk = Vectors.dot(w, tip[k]);
        double wi = Vectors.dot(w, tip[i]);
        double both = wn * Vectors.dot(tip[i], tip[k]);
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 3; b++) {
            hessian[(3 * i + a) * 9 + 3 * k + b] +=
                wk * normal[a] * tip[i][b]
                    + wi * tip[k][a] * normal[b]
                    - both * normal[a] * normal[b];
          }
        }
      }
    }
  }
}
