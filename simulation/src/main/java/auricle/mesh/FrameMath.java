package auricle.mesh;

/** Arithmetic on one director frame: nine numbers d*, m1, m2 at an offset in an array. */
final class FrameMath {
  private FrameMath() {}

  /** Any orthonormal frame whose first vector is the given unit vector. */
  static void start(double[] f, int at, double x, double y, double z) {
    f[at] = x;
    f[at + 1] = y;
    f[at + 2] = z;
    double ax = Math.abs(x);
    double ay = Math.abs(y);
    double az = Math.abs(z);
    boolean first = ax <= ay && ax <= az;
    boolean second = !first && ay <= az;
    align(f, at, first ? 1 : 0, second ? 1 : 0, first || second ? 0 : 1);
  }

  /** m2 := part of the axis perpendicular to d*, made unit; m1 := m2 x d*, so that m1 x m2 = d*. */
  static void align(double[] f, int at, double ax, double ay, double az) {
    double x = f[at];
    double y = f[at + 1];
    double z = f[at + 2];
    double along = ax * x + ay * y + az * z;
    double px = ax - along * x;
    double py = ay - along * y;
    double pz = az - along * z;
    double length = Math.sqrt(px * px + py * py + pz * pz);
    if (!(length > 1e-6 * Math.sqrt(ax * ax + ay * ay + az * az))) {
      throw new IllegalArgumentException("the axis is parallel to the director");
    }
    px /= length;
    py /= length;
    pz /= length;
    f[at + 6] = px;
    f[at + 7] = py;
    f[at + 8] = pz;
    f[at + 3] = py * z - pz * y;
    f[at + 4] = pz * x - px * z;
    f[at + 5] = px * y - py * x;
  }

  static void director(double[] f, int at, double w1, double w2, double[] out, int to) {
    double r = Math.sqrt(1 + w1 * w1 + w2 * w2);
    for (int c = 0; c < 3; c++) {
      out[to + c] = (f[at + c] + w1 * f[at + 3 + c] + w2 * f[at + 6 + c]) / r;
    }
  }

  /**
   * d and its derivatives by the tilts. With r = |v| and d·m_k = w_k / r: d,k = (m_k − d (d·m_k)) /
   * r; d,kl = −[d,k (d·m_l) + d,l (d·m_k) + d (d,l·m_k)] / r.
   */
  static void derivatives(double[] f, int at, double w1, double w2, double[] out, int to) {
    double r = Math.sqrt(1 + w1 * w1 + w2 * w2);
    double s1 = w1 / r;
    double s2 = w2 / r;
    for (int c = 0; c < 3; c++) {
      double d = (f[at + c] + w1 * f[at + 3 + c] + w2 * f[at + 6 + c]) / r;
      double d1 = (f[at + 3 + c] - d * s1) / r;
      double d2 = (f[at + 6 + c] - d * s2) / r;
      out[to + c] = d;
      out[to + 3 + c] = d1;
      out[to + 6 + c] = d2;
      // d,l·m_k = (delta_kl − s_k s_l) / r
      out[to + 9 + c] = -(2 * d1 * s1 + d * (1 - s1 * s1) / r) / r;
      out[to + 12 + c] = -(d1 * s2 + d2 * s1 - d * s1 * s2 / r) / r;
      out[to + 15 + c] = -(2 * d2 * s2 + d * (1 - s2 * s2) / r) / r;
    }
  }

  /** The frame turned by the least rotation that takes d* to the director at tilts w1, w2. */
  static void transport(double[] f, int at, double w1, double w2) {
    double r = Math.sqrt(1 + w1 * w1 + w2 * w2);
    double tilt = Math.sqrt(w1 * w1 + w2 * w2);
    double a1 = w1 / tilt;
    double a2 = w2 / tilt;
    double cos = 1 / r;
    double sin = tilt / r;
    for (int c = 0; c < 3; c++) {
      double d = f[at + c];
      double along = a1 * f[at + 3 + c] + a2 * f[at + 6 + c];
      double turned = cos * along - sin * d;
      f[at + c] = cos * d + sin * along;
      f[at + 3 + c] += a1 * (turned - along);
      f[at + 6 + c] += a2 * (turned - along);
    }
    orthonormalise(f, at);
  }

  /** Keeps round-off from building up over many turns; m2 keeps its direction across d*. */
  private static void orthonormalise(double[] f, int at) {
    double length = Math.sqrt(f[at] * f[at] + f[at + 1] * f[at + 1] + f[at + 2] * f[at + 2]);
    f[at] /= length;
    f[at + 1] /= length;
    f[at + 2] /= length;
    align(f, at, f[at + 6], f[at + 7], f[at + 8]);
  }
}
