package auricle.published;

import auricle.energy.DeadLoad;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.MaterialPoint;
import auricle.energy.ShellTerms;
import auricle.energy.SurfacePoint;
import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Surfaces;
import auricle.mesh.Topology;
import auricle.mesh.Unknowns;
import java.util.ArrayList;
import java.util.List;

/**
 * A flat strip of cartilage, 24 × 6 × 1 mm, 4.6 MPa, on two supports with a load of 1 mN across its
 * middle that makes its lower face the convex one. Length and breadth are our own choice.
 */
final class StripBending {
  private static final double LENGTH = 24;
  private static final double BREADTH = 6;
  private static final double THICKNESS = 1;
  private static final double MODULUS = 4.6;
  private static final double POISSON = 0.4;
  private static final double LOAD = 0.001;

  private final ShellMesh mesh =
      GridMesher.mesh(
          Surfaces.parallelogram(LENGTH, BREADTH, Math.PI / 2), GridOptions.regular(48, 12));
  private final Topology topology = mesh.topology();
  private final Unknowns unknowns = topology.unknowns();

  /** Deflection of the middle of the whole strip as a beam, mm. */
  static double beam() {
    double inertia = BREADTH * Math.pow(THICKNESS, 3) / 12;
    return LOAD * Math.pow(LENGTH, 3) / (48 * MODULUS * inertia);
  }

  /** Deflection of the middle with cuts across the strip that add a compliance, mm. */
  double scored(double compliance) {
    Section whole = Section.isotropic(MODULUS, POISSON, THICKNESS);
    return deflection(compliance > 0 ? whole.softenedAcross(compliance) : whole, List.of());
  }

  /** The same with a loop of thread on the lower face, its bites at the corners of a rectangle. */
  double sutured(double span, double breadth, double axialStiffness_n) {
    List<MaterialPoint> bites =
        List.of(
            bite(span / 2, breadth / 2),
            bite(span / 2, -breadth / 2),
            bite(-span / 2, -breadth / 2),
            bite(-span / 2, breadth / 2));
    ElasticThread loop = new ElasticThread("mattress suture", bites, true, axialStiffness_n);
    loop.tieToLength(loop.length(mesh.unknowns()));
    return deflection(Section.isotropic(MODULUS, POISSON, THICKNESS), List.of(loop));
  }

  /** A bite on the lower face, from the middle of the strip, mm. */
  private MaterialPoint bite(double x, double y) {
    for (int t = 0; t < topology.triangleCount(); t++) {
      double[] w = weights(t, LENGTH / 2 + x, BREADTH / 2 + y);
      if (w[0] >= -1e-9 && w[1] >= -1e-9 && w[0] + w[1] <= 1 + 1e-9) {
        return new SurfacePoint(topology, t, w[0], w[1], -THICKNESS / 2);
      }
    }
    throw new IllegalArgumentException("no place on the strip");
  }

  private double[] weights(int t, double x, double y) {
    int a = topology.vertex(t, 0);
    double[] p = along(a, topology.vertex(t, 1));
    double[] q = along(a, topology.vertex(t, 2));
    double dx = x - mesh.position(a, 0);
    double dy = y - mesh.position(a, 1);
    double area = p[0] * q[1] - p[1] * q[0];
    return new double[] {(dx * q[1] - dy * q[0]) / area, (p[0] * dy - p[1] * dx) / area};
  }

  private double[] along(int from, int to) {
    return new double[] {
      mesh.position(to, 0) - mesh.position(from, 0), mesh.position(to, 1) - mesh.position(from, 1)
    };
  }

  private double deflection(Section section, List<EnergyTerm> others) {
    Directors directors = mesh.directors();
    List<EnergyTerm> terms = new ArrayList<>(others);
    RestShape rest = RestShape.of(topology, mesh.unknowns(), directors);
    terms.addAll(ShellTerms.of(rest, directors, across(section)));
    List<Integer> middle = at(LENGTH / 2);
    DeadLoad.Builder load = new DeadLoad.Builder(topology, mesh.positions());
    middle.forEach(v -> load.onVertex(v, new double[] {0, 0, -LOAD / middle.size()}));
    terms.add(load.build("load"));
    TotalEnergy energy = new TotalEnergy(terms, supports(), directors, mesh.unknowns(), 1);
    LoadPath path = new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(1);
    double[] u = path.last().unknowns();
    return -middle.stream().mapToDouble(v -> u[3 * v + 2]).average().orElse(0);
  }

  private Supports supports() {
    Supports.Builder supports = new Supports.Builder(unknowns.size(), 3 * unknowns.vertexCount());
    at(0).forEach(v -> supports.fix(unknowns.vertex(v) + 2));
    at(LENGTH).forEach(v -> supports.fix(unknowns.vertex(v) + 2));
    int first = at(0).get(0);
    supports.fix(unknowns.vertex(first)).fix(unknowns.vertex(first) + 1);
    return supports.fix(unknowns.vertex(at(LENGTH).get(0)) + 1).build();
  }

  private List<Integer> at(double x) {
    List<Integer> found = new ArrayList<>();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      if (Math.abs(mesh.position(v, 0) - x) < 1e-6) {
        found.add(v);
      }
    }
    return found;
  }

  /** The section with its first axis across the strip, as cuts across it lie. */
  private SectionField across(Section section) {
    return new SectionField() {
      @Override
      public Section section(int triangle) {
        return section;
      }

      @Override
      public double angle(int triangle) {
        double[] edge = along(topology.vertex(triangle, 1), topology.vertex(triangle, 2));
        return Math.PI / 2 - Math.atan2(edge[1], edge[0]);
      }
    };
  }
}
