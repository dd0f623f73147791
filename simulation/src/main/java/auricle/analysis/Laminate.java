package auricle.analysis;

import auricle.material.LaminateBuilder;
import auricle.material.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A section choice worked out: its stiffness, the strain and curvature it would take by itself, and
 * the stress in its plies. In section axes; strains are (E11, E22, 2 E12).
 */
final class Laminate {
  private final Section section;
  private final List<Sheet> sheets = new ArrayList<>();
  private final double[] free;

  /** A ply in the section's axes: stiffness 3 × 3, free strain, and heights of its faces. */
  private record Sheet(List<Double> stiffness, List<Double> free, double low, double high) {}

  Laminate(SectionChoice choice) {
    LaminateBuilder builder = Section.laminate().offset(choice.offset_mm());
    double total = choice.plies().stream().mapToDouble(Ply::thickness_mm).sum();
    double low = choice.offset_mm() - total / 2;
    for (Ply p : choice.plies()) {
      double angle = Math.toRadians(p.angle_deg());
      builder.orthotropic(p.e1_mpa(), p.e2_mpa(), p.nu12(), p.g12_mpa(), angle, p.thickness_mm());
      sheets.add(sheet(p, angle, low));
      low += p.thickness_mm();
    }
    section = builder.build();
    free = anyFree() ? solve(freeResultants()) : new double[6];
  }

  private static Sheet sheet(Ply p, double angle, double low) {
    // the membrane block of a ply of unit thickness is its plane stress stiffness
    Section unit =
        Section.laminate()
            .orthotropic(p.e1_mpa(), p.e2_mpa(), p.nu12(), p.g12_mpa(), angle, 1)
            .build();
    List<Double> q = new ArrayList<>();
    for (int e = 0; e < 9; e++) {
      q.add(unit.stiffness(e / 3, e % 3));
    }
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    List<Double> free =
        List.of(
            c * c * p.free1() + s * s * p.free2(),
            s * s * p.free1() + c * c * p.free2(),
            2 * c * s * (p.free1() - p.free2()));
    return new Sheet(q, free, low, low + p.thickness_mm());
  }

  private boolean anyFree() {
    return sheets.stream().anyMatch(s -> s.free().stream().anyMatch(f -> f != 0));
  }

  /** Forces and moments that hold all plies at zero strain against their free strain. */
  private double[] freeResultants() {
    double[] resultants = new double[6];
    for (Sheet s : sheets) {
      double thickness = s.high() - s.low();
      double first = (s.high() * s.high() - s.low() * s.low()) / 2;
      for (int a = 0; a < 3; a++) {
        double stress = product(s, a, s.free());
        resultants[a] += stress * thickness;
        resultants[a + 3] += stress * first;
      }
    }
    return resultants;
  }

  private static double product(Sheet s, int row, List<Double> strain) {
    double sum = 0;
    for (int b = 0; b < 3; b++) {
      sum += s.stiffness().get(3 * row + b) * strain.get(b);
    }
    return sum;
  }

  /** Solves [[A, B], [B, D]] x = b, positive definite, by Cholesky without pivoting. */
  private double[] solve(double[] b) {
    double[][] l = new double[6][6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = section.stiffness(i, j);
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    double[] x = b.clone();
    for (int i = 0; i < 6; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= l[i][k] * x[k];
      }
      x[i] /= l[i][i];
    }
    for (int i = 5; i >= 0; i--) {
      for (int k = i + 1; k < 6; k++) {
        x[i] -= l[k][i] * x[k];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  Section section() {
    return section;
  }

  /** Whether plies have free strains. */
  boolean strained() {
    return Arrays.stream(free).anyMatch(f -> f != 0);
  }

  /** Strain (0 … 2) and curvature (3 … 5) that the section takes by itself at load factor 1. */
  double free(int a) {
    return free[a];
  }

  /** Height of a face above the mesh, mm. */
  double height(Probe.Face face) {
    double low = sheets.get(0).low();
    double high = sheets.get(sheets.size() - 1).high();
    return face == Probe.Face.TOP ? high : face == Probe.Face.BOTTOM ? low : (low + high) / 2;
  }

  /**
   * Stress at a face, MPa (S11, S22, S12).
   *
   * @param strain elastic strain and curvature of the section, six numbers
   * @param loadFactor share of the free strain that is there
   */
  double[] stress(Probe.Face face, double[] strain, double loadFactor) {
    double z = height(face);
    Sheet sheet = sheets.get(face == Probe.Face.BOTTOM ? 0 : sheets.size() - 1);
    if (face == Probe.Face.MIDDLE) {
      sheet = sheets.stream().filter(s -> s.low() <= z && z <= s.high()).findFirst().orElse(sheet);
    }
    List<Double> ply = new ArrayList<>();
    for (int a = 0; a < 3; a++) {
      double own = free[a] + z * free[a + 3] - sheet.free().get(a);
      ply.add(strain[a] + z * strain[a + 3] + loadFactor * own);
    }
    return new double[] {product(sheet, 0, ply), product(sheet, 1, ply), product(sheet, 2, ply)};
  }
}
