package auricle.mesh;

import auricle.geometry.Vectors;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * The quadric h = d s + e t + a s² + b s t + c t² through the origin that fits points best, where h
 * is the height over a plane and s, t run along two axes in it, each scaled to the extent of the
 * points. Nearer points weigh more (1 / distance in s and t).
 *
 * <p>Points in two rows leave the term across the rows open; then it is left out.
 */
final class QuadricFit {
  /**
   * Smallest ratio of singular values of a fit that is trusted, squared (the eigenvalues of the
   * normal equations are compared). A full second ring has ratios above 0.1, two rows of points
   * below 1e-3. Our own choice.
   */
  private static final double TRUSTED = 0.02 * 0.02;

  /** Scaled distance from which nearness gains no more weight. */
  private static final double NEAREST = 1e-3;

  private final double[] normal;
  private final double[] s;
  private final double[] t;
  private final double sScale;
  private final double tScale;
  private final double[] right;

  /** Of the normal equations, largest eigenvalue first. */
  private final EigenDecomposition modes;

  private QuadricFit(List<double[]> points, double[] normal, double[] axis, boolean full) {
    this.normal = normal;
    this.s = axis;
    this.t = Vectors.cross(normal, s);
    this.sScale = extent(points, s);
    this.tScale = extent(points, t);
    double[][] left = new double[full ? 5 : 4][full ? 5 : 4];
    this.right = new double[left.length];
    for (double[] p : points) {
      double atS = Vectors.dot(p, s) / sScale;
      double atT = Vectors.dot(p, t) / tScale;
      double weight = 1 / Math.max(Math.hypot(atS, atT), NEAREST);
      double[] row = row(atS, atT, weight);
      double height = weight * Vectors.dot(p, normal);
      for (int i = 0; i < left.length; i++) {
        right[i] += row[i] * height;
        for (int j = 0; j < left.length; j++) {
          left[i][j] += row[i] * row[j];
        }
      }
    }
    this.modes = new EigenDecomposition(new Array2DRowRealMatrix(left, false));
  }

  /**
   * Unit normal at the origin of the full quadric.
   *
   * @param points offsets from the origin
   * @param guess unit normal to start from; the result lies on its side
   * @return empty if the points do not fix the quadric
   */
  static Optional<double[]> normal(List<double[]> points, double[] guess) {
    // the height over the plane of a better guess is the better polynomial
    return full(points, guess)
        .flatMap(QuadricFit::trusted)
        .flatMap(n -> full(points, n))
        .flatMap(QuadricFit::trusted)
        .filter(n -> Vectors.dot(n, guess) > 0);
  }

  /**
   * As {@link #normal}, with the square left out across the direction that the points leave open.
   */
  static Optional<double[]> normalOfRows(List<double[]> points, double[] guess) {
    return rows(points, guess)
        .flatMap(QuadricFit::trusted)
        .flatMap(n -> rows(points, n))
        .flatMap(QuadricFit::trusted)
        .filter(n -> Vectors.dot(n, guess) > 0);
  }

  private static Optional<QuadricFit> full(List<double[]> points, double[] normal) {
    double[] axis = principal(points, normal);
    boolean spread = extent(points, axis) > 0 && extent(points, Vectors.cross(normal, axis)) > 0;
    return points.size() >= 5 && spread
        ? Optional.of(new QuadricFit(points, normal, axis, true))
        : Optional.empty();
  }

  private static Optional<QuadricFit> rows(List<double[]> points, double[] normal) {
    return full(points, normal).map(fit -> new QuadricFit(points, normal, fit.alongRows(), false));
  }

  /** Axis along two rows: the quadric that vanishes on both is curved across them alone. */
  private double[] alongRows() {
    double[] v = modes.getEigenvector(4).toArray();
    double ss = v[2] / (sScale * sScale);
    double st = v[3] / (sScale * tScale);
    double tt = v[4] / (tScale * tScale);
    double angle = 0.5 * Math.atan2(st, ss - tt);
    // that is the axis of the larger eigenvalue; across the rows lies the larger in size
    double turned = ss + tt >= 0 ? angle + Math.PI / 2 : angle;
    return Vectors.add(Vectors.scale(Math.cos(turned), s), Math.sin(turned), t);
  }

  private Optional<double[]> trusted() {
    int last = right.length - 1;
    if (!(modes.getRealEigenvalue(last) >= TRUSTED * modes.getRealEigenvalue(0))) {
      return Optional.empty();
    }
    double[] slope = modes.getSolver().solve(new ArrayRealVector(right, false)).toArray();
    double[] tilted = Vectors.add(normal, -slope[0] / sScale, s);
    return Optional.of(Vectors.unit(Vectors.add(tilted, -slope[1] / tScale, t)));
  }

  private static double[] row(double s, double t, double w) {
    return new double[] {w * s, w * t, w * s * s, w * s * t, w * t * t};
  }

  /** Longest principal axis of the points in the plane across a normal. */
  private static double[] principal(List<double[]> points, double[] normal) {
    double[] a = Vectors.unit(Vectors.cross(normal, leastAxis(normal)));
    double[] b = Vectors.cross(normal, a);
    double aa = 0;
    double ab = 0;
    double bb = 0;
    for (double[] p : points) {
      double u = Vectors.dot(p, a);
      double v = Vectors.dot(p, b);
      aa += u * u;
      ab += u * v;
      bb += v * v;
    }
    double angle = 0.5 * Math.atan2(2 * ab, aa - bb);
    return Vectors.add(Vectors.scale(Math.cos(angle), a), Math.sin(angle), b);
  }

  private static double[] leastAxis(double[] n) {
    double[] axis = new double[3];
    int least = Math.abs(n[0]) < Math.abs(n[1]) ? 0 : 1;
    axis[Math.abs(n[least]) < Math.abs(n[2]) ? least : 2] = 1;
    return axis;
  }

  private static double extent(List<double[]> points, double[] axis) {
    double most = 0;
    for (double[] p : points) {
      most = Math.max(most, Math.abs(Vectors.dot(p, axis)));
    }
    return most;
  }
}
