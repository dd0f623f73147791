package auricle.rehearsal;

import auricle.energy.ShellState;
import auricle.material.Section;
import auricle.material.TissueLayers;
import auricle.mesh.RestShape;
import auricle.surgery.BodySections;
import auricle.surgery.EarBody;
import auricle.surgery.ShutShell;

/**
 * Greatest strain and stress of every triangle on the two faces of what is cut and bitten into:
 * principal values of E + z K, largest magnitude.
 *
 * <p>Strain counts from the shape at rest, stress from the shape that is free of stress now, which
 * differs from it by what has relaxed or been grown into: the settled strain, the difference of the
 * two before principal values are taken.
 *
 * <p>Where the sheet is cut, curvature across the cuts is that of the sheet between them, K₂ − c
 * M₂/D₂₂: the turning in the cuts themselves strains nothing beside them. What happens at the root
 * of a cut and under a thread is not resolved.
 */
final class WallStrains {
  private final double[] strain;
  private final double[] settled;
  private final double[] stress;

  private WallStrains(int triangles) {
    strain = new double[triangles];
    settled = new double[triangles];
    stress = new double[triangles];
  }

  /** Of a body in its present state, before any time has passed: nothing is settled. */
  static WallStrains of(EarBody body) {
    ShutShell shut = body.shell().shut();
    return of(body, shut, shut.rest(), body.unknowns());
  }

  /**
   * Of a body after some time, with its directors' frames as they were then.
   *
   * @param shut the shell as it was tied
   * @param unstressed shape in which it is free of stress now
   * @param u all unknowns
   */
  static WallStrains of(EarBody body, ShutShell shut, RestShape unstressed, double[] u) {
    ShellState whole = state(body, shut.rest(), shut, u);
    ShellState carried = unstressed == shut.rest() ? whole : state(body, unstressed, shut, u);
    WallStrains strains = new WallStrains(shut.rest().topology().triangleCount());
    for (int t = 0; t < strains.strain.length; t++) {
      TissueLayers layers = body.wall().layers(t);
      double[] all = strain(whole, shut.sections(), t);
      double[] elastic = strain(carried, shut.sections(), t);
      strains.face(t, all, elastic, layers.posteriorFace_mm(), layers);
      strains.face(t, all, elastic, layers.anteriorFace_mm(), layers);
    }
    return strains;
  }

  /** Strain from a shape, in lengths of the rest shape, as the layers of healing have it. */
  private static ShellState state(EarBody body, RestShape from, ShutShell shut, double[] u) {
    ShellState state = new ShellState(from, shut.rest(), body.shell().directors(), shut.sections());
    state.evaluate(u, 0);
    return state;
  }

  /** Membrane strain 11, 22, 2·12, then curvature of the sheet between cuts. */
  private static double[] strain(ShellState state, BodySections sections, int t) {
    double[] e = new double[6];
    for (int a = 0; a < 3; a++) {
      e[a] = state.strain(t, a);
      e[a + 3] = state.curvature(t, a);
    }
    Section uncut = sections.uncut(t);
    e[4] -= sections.compliance(t) * state.moment(t, 1) / uncut.stiffness(4, 4);
    return e;
  }

  private void face(int t, double[] all, double[] elastic, double z, TissueLayers layers) {
    double[] whole = principal(all, z);
    double[] carried = principal(elastic, z);
    double[] rest = new double[6];
    for (int a = 0; a < 6; a++) {
      rest[a] = all[a] - elastic[a];
    }
    double nu = layers.poisson();
    double plane = layers.core().modulus_mpa() / (1 - nu * nu);
    strain[t] = Math.max(strain[t], greatest(whole[0], whole[1]));
    settled[t] = Math.max(settled[t], greatest(principal(rest, z)[0], principal(rest, z)[1]));
    stress[t] =
        Math.max(
            stress[t],
            plane * greatest(carried[0] + nu * carried[1], carried[1] + nu * carried[0]));
  }

  private static double[] principal(double[] e, double z) {
    double xx = e[0] + z * e[3];
    double yy = e[1] + z * e[4];
    double xy = (e[2] + z * e[5]) / 2;
    double middle = (xx + yy) / 2;
    double radius = Math.hypot((xx - yy) / 2, xy);
    return new double[] {middle + radius, middle - radius};
  }

  private static double greatest(double a, double b) {
    return Math.max(Math.abs(a), Math.abs(b));
  }

  /** Greatest strain of a triangle from its rest, no unit. */
  double strain(int triangle) {
    return strain[triangle];
  }

  /** Greatest value of what of it carries nothing any more, no unit. */
  double settled(int triangle) {
    return settled[triangle];
  }

  /** Greatest stress of a triangle, MPa. */
  double stress_mpa(int triangle) {
    return stress[triangle];
  }
}
