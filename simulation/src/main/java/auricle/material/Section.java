package auricle.material;

/**
 * Stiffness of a through-thickness section: N = A E + B K, M = B E + D K, in axes of the section.
 *
 * <p>Strain E = (E11, E22, 2 E12), curvature K = (K11, K22, 2 K12), positive K where the surface
 * becomes more convex towards its normal; N in N/mm, M in N. The strain at height z above the
 * mid-surface (towards the normal) is E + z K.
 *
 * <p>Immutable. A is in N/mm, B in N, D in N·mm.
 */
public final class Section {
  private final double[] stiffness;
  private final double thickness;
  private final boolean coupled;

  private Section(double[] stiffness, double thickness) {
    this.stiffness = stiffness;
    this.thickness = thickness;
    this.coupled = isCoupled(stiffness);
  }

  /**
   * A homogeneous isotropic sheet in plane stress.
   *
   * @param modulus Young's modulus, MPa, positive
   * @param poisson Poisson's ratio, in (-1, 0.5]
   * @param thickness mm, positive
   */
  public static Section isotropic(double modulus, double poisson, double thickness) {
    return new LaminateBuilder().isotropic(modulus, poisson, thickness).build();
  }

  /** Starts a laminate; plies are added from the under side (against the normal) upwards. */
  public static LaminateBuilder laminate() {
    return new LaminateBuilder();
  }

  static Section of(double[] abd, double thickness) {
    return new Section(abd.clone(), thickness);
  }

  private static boolean isCoupled(double[] s) {
    double largest = 0;
    double scale = 0;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        largest = Math.max(largest, Math.abs(s[6 * i + 3 + j]));
      }
      scale = Math.max(scale, Math.sqrt(s[7 * i] * s[7 * (i + 3)]));
    }
    return largest > 1e-12 * scale;
  }

  /** Entry of the 6 x 6 matrix [[A, B], [B, D]]. */
  public double stiffness(int row, int column) {
    return stiffness[6 * row + column];
  }

  /** Thickness, mm. */
  public double thickness() {
    return thickness;
  }

  /** Whether stretching and bending are coupled (B is not zero). */
  public boolean coupled() {
    return coupled;
  }

  /**
   * The same section with all stiffness scaled.
   *
   * @param membrane factor on A, positive
   * @param bending factor on D, positive; B gets the geometric mean
   */
  public Section scaled(double membrane, double bending) {
    double[] s = stiffness.clone();
    double both = Math.sqrt(membrane * bending);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        s[6 * i + j] *= i < 3 && j < 3 ? membrane : i >= 3 && j >= 3 ? bending : both;
      }
    }
    return new Section(s, thickness);
  }

  /**
   * The same section with hinges across its second axis, smeared: K₂ grows by c M₂ / D₂₂, so that
   * in cylindrical bending about the first axis D₂₂ falls to D₂₂ / (1 + c). Twist and stretch are
   * left as they are. Only for sections without coupling.
   *
   * @param compliance c ≥ 0, no unit
   * @throws IllegalStateException if stretching and bending are coupled
   */
  public Section softenedAcross(double compliance) {
    if (coupled) {
      throw new IllegalStateException("hinges need a section about its neutral surface");
    }
    double[] s = stiffness.clone();
    double left = 1 / (1 + compliance);
    double d12 = stiffness[6 * 3 + 4];
    double d22 = stiffness[6 * 4 + 4];
    s[6 * 3 + 3] -= d12 * d12 / d22 * compliance * left;
    s[6 * 3 + 4] *= left;
    s[6 * 4 + 3] *= left;
    s[6 * 4 + 4] *= left;
    return new Section(s, thickness);
  }

  /**
   * What this section has more of than another, entry by entry: what a layer adds. Its thickness is
   * the difference of the two.
   *
   * @throws IllegalArgumentException if this is not the stiffer of the two in stretch and in
   *     bending
   */
  public Section minus(Section other) {
    double[] s = stiffness.clone();
    for (int i = 0; i < s.length; i++) {
      s[i] -= other.stiffness[i];
    }
    for (int i = 0; i < 6; i++) {
      if (!(s[7 * i] > 0)) {
        throw new IllegalArgumentException("the other section is the stiffer one");
      }
    }
    return new Section(s, Math.max(0, thickness - other.thickness));
  }

  /**
   * The matrix in axes turned by an angle against those of the section.
   *
   * @param angle angle from the new first axis to the section's first axis, anticlockwise about the
   *     normal, rad
   * @return 36 numbers, row by row
   */
  public double[] turned(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    // strain in the section's axes from strain in the new axes
    double[] r = {c * c, s * s, c * s, s * s, c * c, -c * s, -2 * c * s, 2 * c * s, c * c - s * s};
    double[] out = new double[36];
    for (int block = 0; block < 4; block++) {
      turnBlock(r, 3 * (block / 2), 3 * (block % 2), out);
    }
    return out;
  }

  private void turnBlock(double[] r, int row, int column, double[] out) {
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
          for (int l = 0; l < 3; l++) {
            sum += r[3 * k + i] * stiffness[6 * (row + k) + column + l] * r[3 * l + j];
          }
        }
        out[6 * (row + i) + column + j] = sum;
      }
    }
  }
}
