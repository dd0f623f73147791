package auricle.healing;

import auricle.energy.EnergyTerm;
import auricle.energy.ShellState;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Prony;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Surfaces;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A flat strip along x, clamped at its start, whose end is turned about y or drawn along x, held,
 * and let go. Poisson's ratio 0, so that bending is uniform. All lengths mm.
 */
final class ViscousStrip {
  static final double LENGTH = 20;
  private static final double WIDTH = 4;
  private static final double MODULUS = 3;
  private static final double THICKNESS = 0.6;

  /** Width times A and D: force per strain (N) and moment per curvature (N·mm²). */
  static final double STRETCH_STIFFNESS = WIDTH * MODULUS * THICKNESS;

  static final double BEND_STIFFNESS = WIDTH * MODULUS * Math.pow(THICKNESS, 3) / 12;

  private final ShellMesh mesh =
      GridMesher.mesh(
          Surfaces.parallelogram(LENGTH, WIDTH, Math.PI / 2), GridOptions.regular(8, 2));
  final Directors directors = mesh.directors();
  private final List<Integer> end = mesh.vertexSet("end").orElseThrow();
  private final SectionField sections =
      SectionField.uniform(Section.isotropic(MODULUS, 0, THICKNESS));
  private final RestShape flat;
  private final RelaxingLayer relaxing;
  private final List<SheetLayer> layers = new ArrayList<>();
  private Optional<Sheet> sheet = Optional.empty();
  private final TimeStepSettings settings;

  ViscousStrip(Prony prony, TimeStepSettings settings) {
    this(prony, Double.POSITIVE_INFINITY, settings);
  }

  ViscousStrip(Prony prony, double remodelling_s, TimeStepSettings settings) {
    this.settings = settings;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      directors.align(v, 1, 0, 0);
    }
    flat = rest();
    relaxing = new RelaxingLayer(flat, sections, prony, remodelling_s);
    layers.add(relaxing);
  }

  private RestShape rest() {
    return RestShape.of(mesh.topology(), mesh.unknowns(), directors);
  }

  /** Strip and scar; made when it is first asked for. */
  Sheet sheet() {
    sheet = Optional.of(sheet.orElseGet(() -> new Sheet(rest(), directors, layers)));
    return sheet.orElseThrow();
  }

  /** Adds scar all over, its stiffness a share of the strip's. */
  GrowingLayer scar(double share, ScarGrowth growth) {
    SectionField there =
        SectionField.uniform(Section.isotropic(MODULUS, 0, THICKNESS).scaled(share, share));
    GrowingLayer scar = new GrowingLayer(rest(), there, growth);
    layers.add(scar);
    return scar;
  }

  private Supports.Builder clamped() {
    int size = directors.unknowns().size();
    Supports.Builder supports = new Supports.Builder(size, 3 * mesh.vertexCount());
    for (int v : mesh.vertexSet("start").orElseThrow()) {
      for (int c = 0; c < 3; c++) {
        supports.fix(directors.unknowns().vertex(v) + c);
      }
      supports.fix(directors.unknowns().director(v));
      supports.fix(directors.unknowns().director(v) + 1);
    }
    return supports;
  }

  /** Turned at its end by an angle, rad, and at rest at load factor 1 at time 0. */
  TotalEnergy turned(double angle) {
    Supports.Builder supports = clamped();
    for (int v : end) {
      supports.fix(directors.unknowns().director(v));
      supports.prescribe(directors.unknowns().director(v) + 1, angle);
    }
    return loaded(List.of(), supports.build(), mesh.unknowns());
  }

  /** Drawn longer, mm, and at rest at load factor 1 at time 0. */
  TotalEnergy drawn(double by) {
    Supports.Builder supports = clamped();
    end.forEach(v -> supports.prescribe(directors.unknowns().vertex(v), by));
    return loaded(List.of(), supports.build(), mesh.unknowns());
  }

  /** Under loads at its free end, and at rest at load factor 1 at time 0. */
  TotalEnergy under(List<EnergyTerm> loads) {
    return loaded(loads, clamped().build(), mesh.unknowns());
  }

  /** With its end free, as it is in another energy; not yet at rest. */
  TotalEnergy letGo(TotalEnergy held) {
    TotalEnergy free = energy(List.of(), clamped().build(), held.unknowns());
    free.setLoadFactor(1);
    return free;
  }

  private TotalEnergy loaded(List<EnergyTerm> loads, Supports supports, double[] start) {
    sheet().aim(0, 0);
    TotalEnergy energy = energy(loads, supports, start);
    new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(1);
    sheet().arrive(energy.unknowns());
    return energy;
  }

  private TotalEnergy energy(List<EnergyTerm> loads, Supports supports, double[] start) {
    List<EnergyTerm> terms = new ArrayList<>(sheet().terms());
    terms.addAll(loads);
    return new TotalEnergy(terms, supports, directors, start, LENGTH / 8);
  }

  TimeSteps steps(TotalEnergy energy, double start_s) {
    return new TimeSteps(energy, directors, List.of(sheet()), start_s, settings, TimeMonitor.NONE);
  }

  ShellMesh mesh() {
    return mesh;
  }

  /** Strain and curvature from the shape in which the strip is free of stress now. */
  ShellState carried(TotalEnergy energy) {
    return strain(relaxing.unstressed(), energy);
  }

  /** Strain and curvature from the shape in which it was cut. */
  ShellState whole(TotalEnergy energy) {
    return strain(flat, energy);
  }

  private ShellState strain(RestShape from, TotalEnergy energy) {
    ShellState state = new ShellState(from, flat, directors, sections);
    state.evaluate(energy.unknowns(), 0);
    return state;
  }

  /** The vertices of the end with their shares of a load spread evenly along it. */
  Map<Integer, Double> endShares() {
    Map<Integer, Double> shares = new HashMap<>();
    for (int v : end) {
      double y = mesh.position(v, 1);
      boolean corner = Math.min(y, WIDTH - y) < 1e-9;
      shares.put(v, corner ? 0.5 / (end.size() - 1) : 1.0 / (end.size() - 1));
    }
    return shares;
  }

  /** Angle by which the end's directors have turned, rad, mean. */
  double turn(TotalEnergy energy) {
    double[] d = new double[3];
    double sum = 0;
    for (int v : end) {
      directors.value(v, energy.unknowns(), d, 0);
      sum += Math.atan2(d[0], d[2]);
    }
    return sum / end.size();
  }

  /** Elongation of the strip, mm, mean. */
  double elongation(TotalEnergy energy) {
    return end.stream()
            .mapToDouble(v -> energy.unknowns()[directors.unknowns().vertex(v)])
            .average()
            .orElseThrow()
        - LENGTH;
  }

  /** What the support of the end exerts: moment about y (N·mm), or force along x (N). */
  double reaction(TotalEnergy energy, boolean moment) {
    double sum = 0;
    for (int v : end) {
      int unknown = moment ? directors.unknowns().director(v) + 1 : directors.unknowns().vertex(v);
      sum += energy.forces()[unknown];
    }
    return sum;
  }
}
