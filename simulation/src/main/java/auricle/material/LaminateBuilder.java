package auricle.material;

import java.util.ArrayList;
import java.util.List;

/**
 * Builds a {@link Section} of plies in plane stress by classical lamination theory (for example
 * Jones 1999, Mechanics of Composite Materials, eq. 4.22-4.24). Plies are given from the under side
 * (against the normal) upwards; the reference surface is the middle of the whole.
 */
public final class LaminateBuilder {
  private record Ply(
      double c11, double c22, double c12, double c66, double angle, double thickness) {}

  private final List<Ply> plies = new ArrayList<>();
  private double offset;

  LaminateBuilder() {}

  /** Adds an isotropic ply (MPa, -, mm). */
  public LaminateBuilder isotropic(double modulus, double poisson, double thickness) {
    double shear = modulus / (2 * (1 + poisson));
    return orthotropic(modulus, modulus, poisson, shear, 0, thickness);
  }

  /**
   * Adds an orthotropic ply.
   *
   * @param e1 modulus along the fibres, MPa
   * @param e2 modulus across, MPa
   * @param nu12 Poisson's ratio: contraction along 2 under stress along 1
   * @param g12 shear modulus, MPa
   * @param angle from the section's first axis to the fibres, anticlockwise about the normal, rad
   * @param thickness mm
   * @throws IllegalArgumentException if the ply is not stable (a non-positive modulus or thickness,
   *     or ν12² ≥ E1/E2)
   */
  public LaminateBuilder orthotropic(
      double e1, double e2, double nu12, double g12, double angle, double thickness) {
    double det = 1 - nu12 * nu12 * e2 / e1;
    if (!(e1 > 0 && e2 > 0 && g12 > 0 && thickness > 0 && det > 0)) {
      throw new IllegalArgumentException(
          "a ply needs positive moduli and thickness, and nu12² < E1/E2");
    }
    plies.add(new Ply(e1 / det, e2 / det, nu12 * e2 / det, g12, angle, thickness));
    return this;
  }

  /** Shifts the whole laminate along the normal against the reference surface, mm. */
  public LaminateBuilder offset(double shift) {
    offset = shift;
    return this;
  }

  /** The section. */
  public Section build() {
    if (plies.isEmpty()) {
      throw new IllegalArgumentException("a laminate needs a ply");
    }
    double total = plies.stream().mapToDouble(Ply::thickness).sum();
    double[] abd = new double[36];
    double bottom = offset - total / 2;
    for (Ply ply : plies) {
      add(ply, bottom, bottom + ply.thickness(), abd);
      bottom += ply.thickness();
    }
    return Section.of(abd, total);
  }

  private static void add(Ply ply, double z0, double z1, double[] abd) {
    double[] q = turned(ply);
    double a = z1 - z0;
    double b = (z1 * z1 - z0 * z0) / 2;
    double d = (z1 * z1 * z1 - z0 * z0 * z0) / 3;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        abd[6 * i + j] += q[3 * i + j] * a;
        abd[6 * i + j + 3] += q[3 * i + j] * b;
        abd[6 * (i + 3) + j] += q[3 * i + j] * b;
        abd[6 * (i + 3) + j + 3] += q[3 * i + j] * d;
      }
    }
  }

  private static double[] turned(Ply p) {
    double c = Math.cos(p.angle());
    double s = Math.sin(p.angle());
    double[] r = {c * c, s * s, c * s, s * s, c * c, -c * s, -2 * c * s, 2 * c * s, c * c - s * s};
    double[] q = {p.c11(), p.c12(), 0, p.c12(), p.c22(), 0, 0, 0, p.c66()};
    double[] out = new double[9];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        for (int k = 0; k < 9; k++) {
          out[3 * i + j] += r[3 * (k / 3) + i] * q[k] * r[3 * (k % 3) + j];
        }
      }
    }
    return out;
  }
}
