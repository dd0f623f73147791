package auricle.energy;

import auricle.geometry.Vectors;

/**
 * Angle by which a director has turned about a fixed axis a, seen along that axis, from the frame
 * it is measured in.
 *
 * <pre>
 *   y = d + w1 m1 + w2 m2,   e = d − a (a·d) made a unit vector,   q = a × e
 *   θ = atan2(y·q, y·e)
 * </pre>
 *
 * <p>Right-handed about a; zero at w = 0; |θ| &lt; π. A director that stays in the plane normal to
 * a turns by exactly θ.
 */
final class TurnAngle {
  private final double[] along;
  private final double[] across;
  private final double x;
  private final double y;

  /**
   * @param axis a, a unit vector
   * @param d director of the frame
   * @param m1 first tilt direction
   * @param m2 second tilt direction
   */
  TurnAngle(double[] axis, double[] d, double[] m1, double[] m2, double w1, double w2) {
    double[] e = Vectors.unit(Vectors.add(d, -Vectors.dot(axis, d), axis));
    double[] q = Vectors.cross(axis, e);
    along = new double[] {Vectors.dot(m1, e), Vectors.dot(m2, e)};
    across = new double[] {Vectors.dot(m1, q), Vectors.dot(m2, q)};
    x = Vectors.dot(d, e) + w1 * along[0] + w2 * along[1];
    y = w1 * across[0] + w2 * across[1];
  }

  /** θ, rad. */
  double angle() {
    return Math.atan2(y, x);
  }

  /** ∂θ/∂w_k. */
  double slope(int k) {
    return (x * across[k] - y * along[k]) / (x * x + y * y);
  }

  /** ∂²θ/∂w_k ∂w_l. */
  double bend(int k, int l) {
    double square = x * x + y * y;
    double twist = along[l] * across[k] - across[l] * along[k];
    return (twist - 2 * slope(k) * (x * along[l] + y * across[l])) / square;
  }
}
