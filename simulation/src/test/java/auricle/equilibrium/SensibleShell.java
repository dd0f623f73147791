package auricle.equilibrium;

import auricle.energy.DeadLoad;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.ShellTerms;
import auricle.energy.VertexPoint;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Around;
import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.ParametricSurface;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Surfaces;
import auricle.mesh.Unknowns;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A small shell of random shape, section, supports, forces and thread, as someone might ask for it;
 * about one in ten is held too little. The same seed gives the same shell.
 */
final class SensibleShell extends RandomModel {
  private final ShellMesh mesh;
  private final Section section;
  private final double bending;
  private final List<EnergyTerm> loads = new ArrayList<>();
  private final boolean held;
  private final Supports supports;

  SensibleShell(long seed) {
    super(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
    GridOptions.Pattern[] patterns = GridOptions.Pattern.values();
    GridOptions options =
        new GridOptions(
            3 + random.nextInt(5),
            2 + random.nextInt(4),
            patterns[random.nextInt(3)],
            0.3 * random.nextDouble(),
            seed);
    this.mesh = GridMesher.mesh(surface(), options);
    double thickness = Math.pow(10, -1.5 + 1.7 * random.nextDouble());
    double modulus = Math.pow(10, 5 * random.nextDouble());
    double poisson = 0.45 * random.nextDouble();
    this.section = Section.isotropic(modulus, poisson, thickness);
    this.bending = modulus * Math.pow(thickness, 3) / 12;
    loads.add(forces());
    if (random.nextInt(3) == 0) {
      loads.add(thread());
    }
    this.held = random.nextInt(10) != 0;
    this.supports = supports();
  }

  private ParametricSurface surface() {
    double size = 5 + 20 * random.nextDouble();
    Around around = new Around(0, 0.5 + 4 * random.nextDouble(), false);
    return switch (random.nextInt(5)) {
      case 0 ->
          Surfaces.parallelogram(
              size, size * (0.2 + random.nextDouble()), 0.6 + random.nextDouble());
      case 1 -> Surfaces.cylinder(size, size * (0.2 + random.nextDouble()), around);
      case 2 -> Surfaces.sphere(size, 1.4, 0.3 + 0.5 * random.nextDouble(), around);
      case 3 -> Surfaces.annulus(size * 0.4, size, around);
      default -> Surfaces.cone(size, size * 0.5, size * random.nextDouble() + 1, around);
    };
  }

  /** Whether nothing is free to move as a rigid body. */
  boolean held() {
    return held;
  }

  @Override
  TotalEnergy energy() {
    Directors directors = mesh.directors();
    RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    List<EnergyTerm> terms =
        new ArrayList<>(ShellTerms.of(rest, directors, SectionField.uniform(section)));
    terms.addAll(loads);
    return new TotalEnergy(terms, supports, directors, mesh.unknowns(), 1);
  }

  private DeadLoad forces() {
    DeadLoad.Builder builder = new DeadLoad.Builder(mesh.topology(), mesh.positions());
    int count = 1 + random.nextInt(3);
    for (int k = 0; k < count; k++) {
      double size = bending * Math.pow(10, -3 + 3 * random.nextDouble());
      double[] f = new double[3];
      for (int c = 0; c < 3; c++) {
        f[c] = size * (2 * random.nextDouble() - 1);
      }
      builder.onVertex(random.nextInt(mesh.vertexCount()), f);
    }
    return builder.build("forces");
  }

  private ElasticThread thread() {
    int from = random.nextInt(mesh.vertexCount());
    int to = (from + 1 + random.nextInt(mesh.vertexCount() - 1)) % mesh.vertexCount();
    ElasticThread thread =
        new ElasticThread(
            "thread",
            List.of(new VertexPoint(from), new VertexPoint(to)),
            false,
            Math.pow(10, 3 * random.nextDouble()) * section.stiffness(0, 0));
    double length = thread.length(mesh.unknowns());
    thread.tighten(length, length * (0.6 + 0.4 * random.nextDouble()));
    return thread;
  }

  private Supports supports() {
    Unknowns unknowns = mesh.topology().unknowns();
    Supports.Builder supports = new Supports.Builder(unknowns.size(), 3 * unknowns.vertexCount());
    String[] sides = {"start", "end", "side_low", "side_high"};
    boolean clamped = random.nextBoolean();
    int first = random.nextInt(4);
    List<Integer> side = new ArrayList<>(mesh.vertexSet(sides[first]).orElseThrow());
    if (!clamped) {
      // one side alone would be a hinge about which the shell can turn
      side.addAll(mesh.vertexSet(sides[(first + 2) % 4]).orElseThrow());
    }
    for (int v : held ? side : side.subList(0, 1)) {
      for (int c = 0; c < 3; c++) {
        supports.fix(unknowns.vertex(v) + c);
      }
      if (clamped && held) {
        supports.fix(unknowns.director(v)).fix(unknowns.director(v) + 1);
      }
    }
    return supports.build();
  }
}
