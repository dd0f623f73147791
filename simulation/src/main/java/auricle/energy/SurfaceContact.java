package auricle.energy;

import auricle.energy.ContactPairs.Pair;
import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;
import java.util.Arrays;
import java.util.List;

/**
 * Vertices that a triangulated surface keeps at a distance, without friction: one part of the shell
 * against another, the shell against itself, or against a fixed surface.
 *
 * <pre>
 *   W = Σ_v A_v Σ_f c_f w(d(x_v, f) − ξ)
 * </pre>
 *
 * <p>d is the plain (unsigned) distance from vertex v to a face, edge or corner f of the surface, ξ
 * the distance of the two mid-surfaces when they touch (the sum of the half thicknesses), A_v the
 * area the vertex stands for, w the {@link BarrierLaw}, and c_f = ±1 the count of {@link
 * ContactPairs} that makes one contact of many neighbouring faces. Both sides are kept out alike,
 * since {@link #largestStep} lets nothing cross.
 *
 * <p>{@link #update} lists the pairs within activation gap + search margin and raises the stencil
 * version when the list changes; it looks anew only after vertices have moved a quarter of the
 * margin. Stencil: the vertex, then the one to three corners unless they are fixed.
 *
 * <p>Left out: edge against edge (two rims that cross), so rims that can meet should be meshed
 * finer than the gap; and friction. The energy is once continuously differentiable, and twice
 * except where the closest point passes between face, edge and corner. Where a gap is not positive
 * the energy is infinite and derivatives are NaN.
 */
public final class SurfaceContact implements EnergyTerm {
  private final String name;
  private final double[] areas;
  private final ContactSurface surface;
  private final ContactSettings settings;
  private final ContactSearch search;
  private List<Pair> pairs = List.of();
  private int[][] corners = {};
  private int[][] stencils = {};
  private int version;

  /**
   * @param name what it is called in messages
   * @param vertices the vertices that are kept off
   * @param areas_mm2 area of each of them; half of it where a second term keeps the partner's
   *     vertices off this one's triangles
   * @param surface the triangles
   * @param rest unknowns at rest, by which neighbours along the sheet are told
   * @param settings law and distances
   * @throws IllegalArgumentException if there is not one area a vertex, or a negative one
   */
  public SurfaceContact(
      String name,
      int[] vertices,
      double[] areas_mm2,
      ContactSurface surface,
      double[] rest,
      ContactSettings settings) {
    if (areas_mm2.length != vertices.length || !Arrays.stream(areas_mm2).allMatch(a -> a >= 0)) {
      throw new IllegalArgumentException(name + ": expected one area a vertex, none negative");
    }
    this.name = name;
    this.areas = areas_mm2.clone();
    this.surface = surface;
    this.settings = settings;
    this.search = new ContactSearch(vertices.clone(), surface, rest, settings);
    adopt(search.list(rest));
  }

  private void adopt(List<Pair> found) {
    pairs = found;
    corners = found.stream().map(Pair::cornerArray).toArray(int[][]::new);
    stencils = ContactPairs.stencils(found, surface);
  }

  /**
   * Smallest gap of the listed pairs, mm; infinite if there are none. Not positive: a bad start.
   */
  public double smallestGap(double[] u) {
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      smallest = Math.min(smallest, gap(i, u));
    }
    return smallest;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int count() {
    return pairs.size();
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  @Override
  public int stencilVersion() {
    return version;
  }

  @Override
  public boolean curved(int i, double[] u) {
    return !(gap(i, u) >= settings.law().activation_mm());
  }

  @Override
  public List<int[]> prospects() {
    return search.reserve();
  }

  private SimplexDistance distance(int i, double[] u) {
    double[] x = Vectors.at(u, 3 * pairs.get(i).vertex());
    return new SimplexDistance(x, surface.at(u, corners[i]));
  }

  private double gap(int i, double[] u) {
    return distance(i, u).distance() - settings.separation_mm();
  }

  /** Area times count. */
  private double factor(int i) {
    return areas[pairs.get(i).place()] * pairs.get(i).weight();
  }

  private double energy(int i, double gap) {
    double energy = settings.law().energy(gap);
    // features of either count meet their limit together: the sum must not become ∞ − ∞
    return energy == 0 || Double.isInfinite(energy) ? energy : factor(i) * energy;
  }

  @Override
  public double value(int i, double[] u) {
    return energy(i, gap(i, u));
  }

  @Override
  public double derivatives(int i, double[] u, double[] gradient, double[] hessian) {
    SimplexDistance distance = distance(i, u);
    double gap = distance.distance() - settings.separation_mm();
    int n = stencils[i].length;
    if (gap >= settings.law().activation_mm()) {
      Arrays.fill(gradient, 0, n, 0);
      Arrays.fill(hessian, 0, n * n, 0);
      return 0;
    }
    int all = 3 * (corners[i].length + 1);
    double[] slope = new double[all];
    double[] curvature = new double[all * all];
    distance.gradient(slope);
    distance.hessian(curvature);
    double force = factor(i) * settings.law().pressure(gap);
    double stiffness = factor(i) * settings.law().stiffness(gap);
    for (int r = 0; r < n; r++) {
      gradient[r] = -force * slope[r];
      for (int c = 0; c < n; c++) {
        hessian[r * n + c] = stiffness * slope[r] * slope[c] - force * curvature[r * all + c];
      }
    }
    return energy(i, gap);
  }

  @Override
  public void update(double[] u) {
    if (search.listHolds(u)) {
      return;
    }
    List<Pair> found = search.list(u);
    if (!found.equals(pairs)) {
      adopt(found);
      version++;
    }
  }

  /**
   * A step that leaves at least a tenth of every listed gap open and makes no other pair active;
   * infinite if the whole direction is free.
   */
  @Override
  public double largestStep(double[] u, double[] direction) {
    return search.largestStep(u, direction);
  }
}
