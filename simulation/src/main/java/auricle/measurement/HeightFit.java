package auricle.measurement;

/**
 * Where a line passes a height: x and y of the straight line that fits it best around there, nearer
 * points counting more (local linear regression, Cleveland 1979, J Am Stat Assoc 74:829-836, with a
 * Gaussian kernel).
 *
 * <pre>
 *   minimise  Σ_k w_k (x_k − a − b (z_k − z))²,   w_k = exp(−(z_k − z)²/(2 σ²)),   σ = 1.5 mm
 * </pre>
 *
 * <p>Smooth in all coordinates; too small by σ²/(2 R) on a line of radius R, 0.03 mm on a rim of 40
 * mm. Beyond the ends of the line it goes straight on.
 */
final class HeightFit {
  private static final double SPREAD = 1.5;
  private static final double NEGLIGIBLE = -40;
  private static final double LEAST_VARIANCE = 0.01;

  private HeightFit() {}

  /**
   * Where the line passes a height.
   *
   * @param line x, y, z of its points, mm
   * @param z height, mm
   * @return x, y, z there, mm
   */
  static double[] at(double[] line, double z) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < line.length; i += 3) {
      nearest = Math.min(nearest, square(line[i + 2] - z));
    }
    double[] s = new double[7];
    for (int i = 0; i < line.length; i += 3) {
      double d = line[i + 2] - z;
      double under = (nearest - d * d) / (2 * SPREAD * SPREAD);
      if (under < NEGLIGIBLE) {
        continue;
      }
      double w = Math.exp(under);
      s[0] += w;
      s[1] += w * d;
      s[2] += w * d * d;
      s[3] += w * line[i];
      s[4] += w * d * line[i];
      s[5] += w * line[i + 1];
      s[6] += w * d * line[i + 1];
    }
    s[2] += LEAST_VARIANCE * s[0];
    double determinant = s[0] * s[2] - s[1] * s[1];
    return new double[] {
      (s[2] * s[3] - s[1] * s[4]) / determinant, (s[2] * s[5] - s[1] * s[6]) / determinant, z
    };
  }

  private static double square(double d) {
    return d * d;
  }
}
