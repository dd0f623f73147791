package auricle.measurement;

/**
 * The line of the outermost points of a strip of surface: at each station a mean of the points of
 * the profile, weighted by how far each stands out.
 *
 * <pre>
 *   p = Σ w_i p_i / Σ w_i + τ/2 d,   w_i = exp(d · p_i / τ),   τ = 0.1 mm
 * </pre>
 *
 * <p>A smooth stand-in for the outermost point in the direction d: exact on the crest of a parabola
 * of any radius well above τ, up to τ/2 too little where the strip ends on its way out. Sampled
 * densely enough while neighbouring points are within √(τ R) of each other, R the radius of the
 * crest.
 */
final class Ridge {
  private static final double SOFTNESS = 0.1;
  private static final double NEGLIGIBLE = -40;
  private final SampleBlock block;
  private final int axis;
  private final int sign;

  /**
   * @param block the strip
   * @param axis 0, 1, 2: the direction d lies along x, y or z
   * @param sign +1 or -1: which way along it
   */
  Ridge(SampleBlock block, int axis, int sign) {
    this.block = block;
    this.axis = axis;
    this.sign = sign;
  }

  /** The line, x, y, z a station, mm. */
  double[] line(double[] points) {
    double[] line = new double[3 * block.stations()];
    for (int k = 0; k < block.stations(); k++) {
      outermost(points, block.at(k, 0), block.across(), axis, sign, line, 3 * k);
    }
    return line;
  }

  /** The outermost coordinate of the whole strip along the axis, mm. */
  double extreme(double[] points) {
    double[] line = line(points);
    double[] one = new double[3];
    outermost(line, 0, block.stations(), axis, sign, one, 0);
    return one[axis];
  }

  private static void outermost(
      double[] p, int from, int count, int axis, int sign, double[] out, int to) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      most = Math.max(most, sign * p[from + 3 * i + axis]);
    }
    double sum = 0;
    for (int i = 0; i < count; i++) {
      int at = from + 3 * i;
      double under = (sign * p[at + axis] - most) / SOFTNESS;
      if (under < NEGLIGIBLE) {
        continue;
      }
      double w = Math.exp(under);
      sum += w;
      for (int c = 0; c < 3; c++) {
        out[to + c] += w * p[at + c];
      }
    }
    for (int c = 0; c < 3; c++) {
      out[to + c] /= sum;
    }
    out[to + axis] += sign * SOFTNESS / 2;
  }
}
