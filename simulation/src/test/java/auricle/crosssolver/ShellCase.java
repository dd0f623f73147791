package auricle.crosssolver;

import auricle.energy.DeadLoad;
import auricle.energy.ElasticAttachment;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.MaterialPoint;
import auricle.energy.ShellTerms;
import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Unknowns;
import auricle.numerics.Outcome;
import auricle.surgery.BeddedAreas;
import java.util.ArrayList;
import java.util.List;

/** One problem told to both solvers. */
final class ShellCase {
  private final ShellMesh mesh;
  private final WedgeModel wedges;
  private final Section section;
  private final Directors directors;
  private final Unknowns unknowns;
  private final Supports.Builder supports;
  private final DeadLoad.Builder loads;
  private final List<EnergyTerm> terms = new ArrayList<>();
  private boolean loaded;

  ShellCase(ShellMesh mesh, double thickness, double modulus, double poisson) {
    this.mesh = mesh;
    this.wedges = new WedgeModel(mesh, thickness, modulus, poisson);
    this.section = Section.isotropic(modulus, poisson, thickness);
    this.directors = mesh.directors();
    this.unknowns = mesh.topology().unknowns();
    this.supports = new Supports.Builder(unknowns.size(), 3 * unknowns.vertexCount());
    this.loads = CrossSolverTest.load(mesh);
  }

  ShellMesh mesh() {
    return mesh;
  }

  WedgeModel wedges() {
    return wedges;
  }

  Directors directors() {
    return directors;
  }

  void clamp(String set) {
    List<Integer> vertices = mesh.vertexSet(set).orElseThrow();
    wedges.fix(vertices, List.of(1, 2, 3));
    for (int v : vertices) {
      for (int c = 0; c < 3; c++) {
        supports.fix(unknowns.vertex(v) + c);
      }
      supports.fix(unknowns.director(v)).fix(unknowns.director(v) + 1);
    }
  }

  void symmetry(String set, int axis) {
    List<Integer> vertices = mesh.vertexSet(set).orElseThrow();
    wedges.fix(vertices, List.of(axis + 1));
    for (int v : vertices) {
      directors.align(v, axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
      supports.fix(unknowns.vertex(v) + axis).fix(unknowns.director(v) + 1);
    }
  }

  /** Beds vertices elastically, alike in all directions, MPa/mm. */
  void bed(List<Integer> vertices, double stiffness) {
    double[] all = BeddedAreas.of(mesh, vertices);
    double[] areas = vertices.stream().mapToDouble(v -> all[v]).toArray();
    for (int k = 0; k < areas.length; k++) {
      wedges.spring(vertices.get(k), stiffness * areas[k]);
    }
    int[] held = vertices.stream().mapToInt(v -> v).toArray();
    terms.add(ElasticAttachment.isotropic("bedding", held, areas, mesh.unknowns(), stiffness));
  }

  /** A thread of a stiffness, N/mm, between two bites that wants to be shorter, mm. */
  void tie(SpreadBite from, SpreadBite to, double stiffness, double shortening) {
    List<MaterialPoint> ends = List.of(from.point(mesh), to.point(mesh));
    double length = new ElasticThread("", ends, false, 1).length(mesh.unknowns()) - shortening;
    ElasticThread thread =
        new ElasticThread("thread " + terms.size(), ends, false, stiffness * length);
    thread.tighten(length + shortening, length);
    terms.add(thread);
    wedges.thread(from, to, stiffness, shortening);
  }

  void fixPoint(int vertex, int axis) {
    wedges.fixPoint(vertex, axis + 1);
    supports.fix(unknowns.vertex(vertex) + axis);
  }

  void force(int vertex, WedgeModel.Face face, double fx, double fy, double fz) {
    wedges.force(vertex, face, fx, fy, fz);
    loads.onVertex(vertex, new double[] {fx, fy, fz});
    loaded = true;
  }

  void add(EnergyTerm term) {
    terms.add(term);
  }

  /**
   * A thread in the state u, told to the other solver as the closing of its bites along the line it
   * has there; the closing is stable on the way, dead forces are not.
   */
  void exportThread(int from, int to, double[] u) {
    double[] d = new double[3];
    double length = 0;
    for (int c = 0; c < 3; c++) {
      d[c] = u[3 * to + c] - u[3 * from + c];
      length += d[c] * d[c];
    }
    double amount = 0;
    for (int c = 0; c < 3; c++) {
      d[c] /= Math.sqrt(length);
      double moved =
          u[3 * from + c] - mesh.position(from, c) - u[3 * to + c] + mesh.position(to, c);
      amount += d[c] * moved;
    }
    wedges.close(from, to, d, amount);
  }

  /** Our equilibrium at full load: all unknowns; the directors are left in that state. */
  double[] solve() {
    directors.restore(start());
    List<EnergyTerm> all = new ArrayList<>(terms);
    RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    all.addAll(ShellTerms.of(rest, directors, SectionField.uniform(section)));
    if (loaded) {
      all.add(loads.build("forces"));
    }
    TotalEnergy energy = new TotalEnergy(all, supports.build(), directors, mesh.unknowns(), 1);
    LoadPath path = new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(0.5, 1);
    if (path.outcome() != Outcome.CONVERGED) {
      throw new IllegalStateException("our own solver ended " + path.outcome());
    }
    return path.last().unknowns();
  }

  private double[] saved = new double[0];

  private double[] start() {
    if (saved.length == 0) {
      saved = directors.save();
    }
    return saved;
  }
}
