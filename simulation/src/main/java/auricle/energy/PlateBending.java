package auricle.energy;

import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.PlateShape;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import java.util.List;

/**
 * Bending energy of the plates, one contribution a triangle: W = ½ ∫ K : D : K dA.
 *
 * <p>Kinematics: the discrete-Kirchhoff triangle of Batoz, Bathe and Ho (1980, Int J Numer Methods
 * Eng 15:1771-1812), carried to large rotations by unit directors at the corners ({@link
 * TiltCurvature} has the formulas). Three Gauss points at the middles of the edges integrate the
 * energy exactly.
 *
 * <p>Since the curvature is linear in z, W = ½ (z − z̄)ᵀ Q (z − z̄) with a constant 6 x 6 matrix Q,
 * made once. Stencil: x, y, z of corners 0, 1, 2, then w1, w2 of their directors (15 places).
 * Positive curvature: convex towards the normal. Membrane energy and coupling are terms of their
 * own. {@link auricle.material.BendingStop Stops} act on the mean curvature of a triangle.
 */
public final class PlateBending implements EnergyTerm {
  private final Directors directors;
  private final int[][] stencils;
  private final double[] rest;
  private final double[] form;
  private final double[] pull;
  private final double[] stored;
  private final List<ShellLayer> layers;
  private final double[][] parts;
  private final StoppedBending[] stops;
  private final RestShape start;
  private final RestShape grown;
  private final RestWatch watch;

  /**
   * @param start rest shape at load factor 0
   * @param grown rest shape at load factor 1, often the same; gives areas and all constants
   * @param directors directors of the same mesh, one a vertex
   * @param sections section of every triangle; D is used here
   */
  public PlateBending(
      RestShape start, RestShape grown, Directors directors, SectionField sections) {
    this(start, grown, directors, sections, List.of());
  }

  /**
   * Several layers as one.
   *
   * @param layers the first covers all and gives areas and all constants
   * @throws IllegalArgumentException if one of them has stops
   */
  PlateBending(List<ShellLayer> layers, Directors directors) {
    this(layers.get(0).rest(), layers.get(0).rest(), directors, layers.get(0).sections(), layers);
  }

  private PlateBending(
      RestShape start,
      RestShape grown,
      Directors directors,
      SectionField sections,
      List<ShellLayer> layers) {
    Topology topology = grown.topology();
    this.start = start;
    this.grown = grown;
    this.watch = new RestWatch(start, grown);
    int n = topology.triangleCount();
    this.directors = directors;
    this.stencils = new int[n][];
    this.rest = new double[6 * n];
    this.form = new double[36 * n];
    this.pull = new double[6 * n];
    this.stored = new double[n];
    this.layers = List.copyOf(layers);
    this.parts = new double[layers.size()][36 * n];
    this.stops = new StoppedBending[n];
    for (int t = 0; t < n; t++) {
      stencils[t] = TiltCurvature.stencil(topology, directors.unknowns(), t);
      stops[t] = StoppedBending.of(grown.plate(t), t, sections);
    }
    addForms(sections, form);
    for (int k = 0; k < parts.length; k++) {
      addForms(withoutStops(layers.get(k).sections()), parts[k]);
    }
    setLoadFactor(1);
  }

  private void addForms(SectionField sections, double[] forms) {
    for (int t = 0; t < stencils.length; t++) {
      if (sections.covers(t)) {
        PlateShape plate = grown.plate(t);
        double[] section = sections.varying(t).turned(sections.angle(t));
        for (int g = 0; g < 3; g++) {
          double[] c = TiltCurvature.atEdgeMiddle(plate, g);
          addForm(c, section, plate.area() / 3, forms, 36 * t);
        }
        addMeanForm(t, plate, section, sections, forms);
      }
    }
  }

  /** What the mean curvature of a triangle has against it beyond what varies. */
  private void addMeanForm(
      int t, PlateShape plate, double[] varying, SectionField sections, double[] forms) {
    if (!sections.varying(t).equals(sections.section(t))) {
      double[] more = sections.section(t).turned(sections.angle(t));
      for (int i = 0; i < more.length; i++) {
        more[i] -= varying[i];
      }
      addForm(TiltCurvature.mean(plate), more, plate.area(), forms, 36 * t);
    }
  }

  private SectionField withoutStops(SectionField sections) {
    for (int t = 0; t < stencils.length; t++) {
      if (sections.covers(t) && !sections.stops(t).isEmpty()) {
        throw new IllegalArgumentException("stops in a layer of triangle " + t);
      }
    }
    return sections;
  }

  @Override
  public void setLoadFactor(double loadFactor) {
    if (watch.changed(loadFactor)) {
      for (int t = 0; t < stencils.length; t++) {
        TiltCurvature.rest(start, grown, loadFactor, t, rest, 6 * t);
      }
    }
    if (!layers.isEmpty()) {
      carryLayers();
    }
  }

  private void carryLayers() {
    FormSum sum = new FormSum(6);
    double[] off = new double[6];
    for (int t = 0; t < stencils.length; t++) {
      sum.clear();
      for (int k = 0; k < parts.length; k++) {
        RestShape own = layers.get(k).rest();
        TiltCurvature.rest(own, own, 1, t, off, 0);
        for (int i = 0; i < 6; i++) {
          off[i] -= rest[6 * t + i];
        }
        sum.add(layers.get(k).share(), parts[k], 36 * t, off);
      }
      System.arraycopy(sum.form(), 0, form, 36 * t, 36);
      System.arraycopy(sum.pull(), 0, pull, 6 * t, 6);
      stored[t] = sum.constant();
    }
  }

  private static void addForm(double[] c, double[] section, double weight, double[] to, int at) {
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        double sum = 0;
        for (int a = 0; a < 3; a++) {
          for (int b = 0; b < 3; b++) {
            sum += c[6 * a + i] * section[6 * (a + 3) + b + 3] * c[6 * b + j];
          }
        }
        to[at + 6 * i + j] += weight * sum;
      }
    }
  }

  @Override
  public String name() {
    return "plate bending";
  }

  @Override
  public int count() {
    return stencils.length;
  }

  @Override
  public int[] stencil(int i) {
    return stencils[i];
  }

  @Override
  public double value(int t, double[] u) {
    TiltCurvature tilts = TiltCurvature.local();
    tilts.measure(stencils[t], u, directors, false);
    double energy = stored[t] + tilts.energy(form, 36 * t, rest, pull, 6 * t);
    return energy + stops[t].add(tilts, rest, 6 * t);
  }

  @Override
  public double gradient(int t, double[] u, double[] gradient) {
    TiltCurvature tilts = TiltCurvature.local();
    tilts.measure(stencils[t], u, directors, true);
    double energy = stored[t] + tilts.energy(form, 36 * t, rest, pull, 6 * t);
    energy += stops[t].add(tilts, rest, 6 * t);
    tilts.gradient(gradient);
    return energy;
  }

  @Override
  public double derivatives(int t, double[] u, double[] gradient, double[] hessian) {
    TiltCurvature tilts = TiltCurvature.local();
    tilts.measure(stencils[t], u, directors, true);
    double energy = stored[t] + tilts.energy(form, 36 * t, rest, pull, 6 * t);
    double[] changed = stops[t].form(tilts, form, 36 * t, rest, 6 * t);
    energy += stops[t].add(tilts, rest, 6 * t);
    tilts.addQuadratic(changed, changed == form ? 36 * t : 0, gradient, hessian);
    return energy;
  }
}
