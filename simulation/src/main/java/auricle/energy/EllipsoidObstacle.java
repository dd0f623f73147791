package auricle.energy;

import auricle.geometry.Vectors;

/**
 * A solid ellipsoid with axes along x, y, z; vertices stay outside.
 *
 * <p>The closest point y of an outside point x (relative to the centre) solves y_i = a_i² x_i /
 * (a_i² + t) with Σ (y_i/a_i)² = 1, t ≥ 0; the sum is convex and falling in t, so Newton from t = 0
 * closes in from one side. With the unit normal n at y and the shape operator S there, ∂²d = S (I +
 * d S)⁻¹ on the tangent plane. Inside, the distance is only some negative number.
 */
public final class EllipsoidObstacle implements Obstacle {
  private static final int MOST_ITERATIONS = 200;
  private final double[] centre;
  private final double[] squares = new double[3];

  /**
   * @param centre mm
   * @param semiAxes_mm half lengths along x, y, z, all &gt; 0
   */
  public EllipsoidObstacle(double[] centre, double[] semiAxes_mm) {
    this.centre = centre.clone();
    for (int c = 0; c < 3; c++) {
      if (!(semiAxes_mm[c] > 0)) {
        throw new IllegalArgumentException("semi-axis " + semiAxes_mm[c] + " mm must be positive");
      }
      squares[c] = semiAxes_mm[c] * semiAxes_mm[c];
    }
  }

  @Override
  public double distance(double[] x) {
    double[] local = Vectors.subtract(x, centre);
    double excess = excess(local, 0);
    if (excess <= 0) {
      double shortest = Math.sqrt(Math.min(squares[0], Math.min(squares[1], squares[2])));
      return shortest * (Math.sqrt(1 + excess) - 1);
    }
    return Vectors.norm(Vectors.subtract(local, foot(local)));
  }

  @Override
  public double derivatives(double[] x, double[] gradient, double[] hessian) {
    double[] foot = foot(Vectors.subtract(x, centre));
    double[] ascent = {foot[0] / squares[0], foot[1] / squares[1], foot[2] / squares[2]};
    double steepness = Vectors.norm(ascent);
    double[] n = Vectors.scale(1 / steepness, ascent);
    double distance = distance(x);
    System.arraycopy(n, 0, gradient, 0, 3);
    double[] e = Vectors.unit(Vectors.cross(n, leastAligned(n)));
    double[] f = Vectors.cross(n, e);
    double see = bend(e, e) / steepness;
    double sef = bend(e, f) / steepness;
    double sff = bend(f, f) / steepness;
    double det = (1 + distance * see) * (1 + distance * sff) - distance * distance * sef * sef;
    double gauss = distance * (see * sff - sef * sef);
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        hessian[3 * a + b] =
            ((see + gauss) * e[a] * e[b]
                    + sef * (e[a] * f[b] + f[a] * e[b])
                    + (sff + gauss) * f[a] * f[b])
                / det;
      }
    }
    return distance;
  }

  private double bend(double[] a, double[] b) {
    return a[0] * b[0] / squares[0] + a[1] * b[1] / squares[1] + a[2] * b[2] / squares[2];
  }

  private static double[] leastAligned(double[] n) {
    double x = Math.abs(n[0]);
    double y = Math.abs(n[1]);
    double z = Math.abs(n[2]);
    boolean first = x <= y && x <= z;
    return new double[] {first ? 1 : 0, !first && y <= z ? 1 : 0, !first && y > z ? 1 : 0};
  }

  private double excess(double[] x, double t) {
    double sum = -1;
    for (int c = 0; c < 3; c++) {
      double q = x[c] / (squares[c] + t);
      sum += squares[c] * q * q;
    }
    return sum;
  }

  private double[] foot(double[] x) {
    double t = 0;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double slope = 0;
      for (int c = 0; c < 3; c++) {
        double q = x[c] / (squares[c] + t);
        slope -= 2 * squares[c] * q * q / (squares[c] + t);
      }
      double next = t - excess(x, t) / slope;
      if (!(next > t)) {
        break;
      }
      t = next;
    }
    double[] foot = new double[3];
    for (int c = 0; c < 3; c++) {
      foot[c] = squares[c] * x[c] / (squares[c] + t);
    }
    return foot;
  }
}
