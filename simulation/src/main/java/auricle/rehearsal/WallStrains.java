package auricle.rehearsal;

import auricle.energy.ShellState;
import auricle.material.Section;
import auricle.material.TissueLayers;
import auricle.surgery.BodySections;
import auricle.surgery.EarBody;
import auricle.surgery.ShutShell;

/**
 * Greatest strain and stress of every triangle on the two faces of what is cut and bitten into:
 * principal values of E + z K, largest magnitude.
 *
 * <p>Where the sheet is cut, curvature across the cuts is that of the sheet between them, K₂ − c
 * M₂/D₂₂: the turning in the cuts themselves strains nothing beside them. What happens at the root
 * of a cut and under a thread is not resolved.
 */
final class WallStrains {
  private final EarBody body;
  private final double[] strain;
  private final double[] stress;

  WallStrains(EarBody body) {
    this.body = body;
    int n = body.auricle().mesh().topology().triangleCount();
    strain = new double[n];
    stress = new double[n];
    ShutShell shell = body.shell().shut();
    ShellState state = body.shell().state(shell);
    for (int t = 0; t < n; t++) {
      TissueLayers layers = body.wall().layers(t);
      double[] k = sheetCurvature(state, shell.sections(), t);
      face(t, state, k, layers.posteriorFace_mm(), layers);
      face(t, state, k, layers.anteriorFace_mm(), layers);
    }
  }

  private static double[] sheetCurvature(ShellState state, BodySections sections, int t) {
    Section uncut = sections.uncut(t);
    double[] k = {state.curvature(t, 0), state.curvature(t, 1), state.curvature(t, 2)};
    k[1] -= sections.compliance(t) * state.moment(t, 1) / uncut.stiffness(4, 4);
    return k;
  }

  private void face(int t, ShellState state, double[] k, double z, TissueLayers layers) {
    double xx = state.strain(t, 0) + z * k[0];
    double yy = state.strain(t, 1) + z * k[1];
    double xy = (state.strain(t, 2) + z * k[2]) / 2;
    double middle = (xx + yy) / 2;
    double radius = Math.hypot((xx - yy) / 2, xy);
    double first = middle + radius;
    double second = middle - radius;
    double nu = layers.poisson();
    double plane = layers.core().modulus_mpa() / (1 - nu * nu);
    double s1 = plane * (first + nu * second);
    double s2 = plane * (second + nu * first);
    strain[t] = Math.max(strain[t], Math.max(Math.abs(first), Math.abs(second)));
    stress[t] = Math.max(stress[t], Math.max(Math.abs(s1), Math.abs(s2)));
  }

  /** Greatest strain of a triangle, no unit. */
  double strain(int triangle) {
    return strain[triangle];
  }

  /** Greatest stress of a triangle, MPa. */
  double stress_mpa(int triangle) {
    return stress[triangle];
  }
}
