package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import java.util.Arrays;
import java.util.List;

/**
 * Membrane energy, one contribution an edge domain: W = ½ w E : A : E with the strain of the two
 * plates at the edge averaged by area (edge-smoothed strain: Liu, Nguyen-Thoi and Lam 2009, J Sound
 * Vib 320:1100-1130).
 *
 * <p>The strain of a plate comes from the squared <em>arc</em> lengths of its three edges ({@link
 * EdgeArcs}), so that bending a curved element does not stretch it (no membrane locking by
 * faceting). Averaging over an edge keeps constant strain exact and takes away most of the
 * stiffness that constant-strain triangles have too much in bending in their plane.
 *
 * <p>The Hessian is Bᵀ A B + Σ N ∂²E with the section force N that the last linearisation foresaw
 * ({@link #foresee}), not the one that is there: a finite turn looks like a stretch to second order
 * in the step, and membrane forces of that stretch, which the next iteration takes away, would make
 * the sheet seem far too stiff or unstable (mixed integration points: Magisano, Leonetti and Garcea
 * 2017, Comput Methods Appl Mech Eng 313:986-1005).
 *
 * <p>Stencil: x, y, z of the vertices (start, end, left opposite[, right opposite]), then w1, w2 of
 * their directors: 20 places, or 15 where the domain has one triangle. Strain E = (Ett, Enn, 2 Etn)
 * in axes along and across the edge, tension positive; Green's measure, exact for any rotation.
 */
public final class EdgeMembrane implements EnergyTerm {
  private final Directors directors;
  private final List<EdgeDomain> domains;
  private final double[] foreseen;
  private final List<ShellLayer> layers;
  private final double[][] parts;
  private final RestWatch watch;

  /**
   * @param start rest shape at load factor 0
   * @param grown rest shape at load factor 1, often the same; gives areas and all constants
   * @param directors directors of the same mesh
   * @param sections section of every triangle; A is used here
   */
  public EdgeMembrane(
      RestShape start, RestShape grown, Directors directors, SectionField sections) {
    this(start, grown, directors, sections, List.of());
  }

  /**
   * Several layers as one.
   *
   * @param layers the first covers all, and gives areas, all constants and where strain may jump
   */
  EdgeMembrane(List<ShellLayer> layers, Directors directors) {
    this(layers.get(0).rest(), layers.get(0).rest(), directors, layers.get(0).sections(), layers);
    setLoadFactor(1);
  }

  private EdgeMembrane(
      RestShape start,
      RestShape grown,
      Directors directors,
      SectionField sections,
      List<ShellLayer> layers) {
    this.directors = directors;
    this.domains = EdgeDomain.all(start, grown, directors.unknowns(), sections);
    this.foreseen = new double[3 * domains.size()];
    Arrays.fill(foreseen, Double.NaN);
    this.layers = List.copyOf(layers);
    this.watch = new RestWatch(start, grown);
    this.parts = new double[layers.size()][9 * domains.size()];
    for (int k = 0; k < parts.length; k++) {
      for (int i = 0; i < domains.size(); i++) {
        double[] s = domains.get(i).stiffness(layers.get(k).sections());
        for (int a = 0; a < 3; a++) {
          System.arraycopy(s, 6 * a, parts[k], 9 * i + 3 * a, 3);
        }
      }
    }
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    if (watch.changed(loadFactor)) {
      domains.forEach(domain -> domain.grow(loadFactor));
    }
    if (!layers.isEmpty()) {
      carryLayers();
    }
  }

  private void carryLayers() {
    FormSum sum = new FormSum(3);
    double[] off = new double[3];
    for (int i = 0; i < domains.size(); i++) {
      EdgeDomain domain = domains.get(i);
      sum.clear();
      for (int k = 0; k < parts.length; k++) {
        RestShape rest = layers.get(k).rest();
        domain.restStrain(rest, rest, 1, off);
        for (int a = 0; a < 3; a++) {
          off[a] -= domain.restStrain(a);
        }
        sum.add(layers.get(k).share(), parts[k], 9 * i, off);
      }
      domain.carry(sum);
    }
  }

  @Override
  public String name() {
    return "membrane";
  }

  @Override
  public int count() {
    return domains.size();
  }

  @Override
  public int[] stencil(int i) {
    return domains.get(i).stencil();
  }

  @Override
  public double value(int i, double[] u) {
    EdgeDomain domain = domains.get(i);
    EdgeArcs arcs = EdgeArcs.local();
    arcs.measure(domain, u, directors, false);
    return arcs.energy(domain);
  }

  @Override
  public double gradient(int i, double[] u, double[] gradient) {
    return EdgeArcs.local().gradient(domains.get(i), u, directors, gradient);
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    EdgeDomain domain = domains.get(i);
    EdgeArcs arcs = EdgeArcs.local();
    arcs.measure(domain, u, directors, true);
    double energy = arcs.energy(domain);
    arcs.gradient(domain, gradient);
    arcs.material(domain, hessian);
    if (!Double.isNaN(foreseen[3 * i])) {
      arcs.expect(domain, foreseen, 3 * i);
    }
    arcs.addCurving(domain, hessian);
    return energy;
  }

  @Override
  public void foresee(int i, double[] from, double[] to) {
    if (from == to) {
      foreseen[3 * i] = Double.NaN;
    } else {
      EdgeArcs.local().foresee(domains.get(i), from, to, directors, foreseen, 3 * i);
    }
  }
}
