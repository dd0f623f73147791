package auricle.equilibrium;

import auricle.energy.BarrierLaw;
import auricle.energy.DeadLoad;
import auricle.energy.ElasticThread;
import auricle.energy.EnergyTerm;
import auricle.energy.FollowerPressure;
import auricle.energy.ObstacleContact;
import auricle.energy.PlaneObstacle;
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
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * A small plate or shell, thick or thin, with loads from hardly any to far too much, threads, a
 * floor, growth, and supports that may be missing.
 */
final class RandomShell extends RandomModel {
  private final ShellMesh mesh;
  private final double[] start;
  private final Supports supports;
  private final double modulus = power(-1, 5);
  private final double thickness = power(-2, 0);
  private final double scale;
  private final long seed;

  RandomShell(UniformRandomProvider random) {
    super(random);
    GridOptions.Pattern[] patterns = GridOptions.Pattern.values();
    GridOptions options =
        new GridOptions(
            1 + random.nextInt(4),
            1 + random.nextInt(3),
            patterns[random.nextInt(3)],
            between(0, 0.3),
            random.nextLong());
    mesh = sound(surface(), options);
    start = mesh.unknowns();
    // what bends a plate of size 5 by about its size
    scale = modulus * Math.pow(thickness, 3) / 25;
    supports = supports();
    seed = random.nextLong();
  }

  /** The mesh, or a regular one where jitter made a sliver that input checks would refuse. */
  private static ShellMesh sound(ParametricSurface surface, GridOptions options) {
    ShellMesh mesh = GridMesher.mesh(surface, options);
    RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), mesh.directors());
    boolean closes = IntStream.range(0, mesh.topology().triangleCount()).allMatch(rest::closes);
    return closes
        ? mesh
        : GridMesher.mesh(surface, GridOptions.regular(options.first(), options.second()));
  }

  private ParametricSurface surface() {
    return switch (random.nextInt(4)) {
      case 0 -> Surfaces.parallelogram(between(2, 10), between(1, 5), between(0.8, 1.6));
      case 1 -> Surfaces.cylinder(between(2, 30), between(1, 5), new Around(1, 1.6, false));
      case 2 -> Surfaces.sphere(between(4, 12), 0.3, between(0.7, 1.5), new Around(0, 1, false));
      default -> Surfaces.twistedStrip(between(2, 10), between(1, 3), between(0.1, 2));
    };
  }

  private int[] side(String name) {
    return mesh.vertexSet(name).orElseThrow().stream().mapToInt(i -> i).toArray();
  }

  private Supports supports() {
    Unknowns layout = mesh.topology().unknowns();
    Supports.Builder builder = new Supports.Builder(layout.size(), layout.director(0));
    for (String name : List.of("start", "end")) {
      boolean held = chance(name.equals("start") ? 0.95 : 0.3);
      boolean clamped = chance(0.6);
      boolean moved = held && chance(0.15);
      for (int v : held ? side(name) : new int[0]) {
        IntStream.range(3 * v, 3 * v + 3).forEach(builder::fix);
        if (clamped) {
          builder.fix(layout.director(v)).fix(layout.director(v) + 1);
        }
        if (moved) {
          builder.prescribe(3 * v + 2, 1);
        }
      }
    }
    return builder.build();
  }

  @Override
  TotalEnergy energy() {
    Directors directors = mesh.directors();
    List<EnergyTerm> terms = new ArrayList<>(new Loads(seed).terms());
    RestShape rest = RestShape.of(mesh.topology(), start, directors);
    RestShape grown = RestShape.of(mesh.topology(), start, directors);
    if (seed % 5 == 0) {
      grown.addCurvature(0, 0.2, 0, 0.1);
      grown.addStrain(0, 0.1, -0.05, 0);
      if (!grown.closes(0)) {
        grown = rest; // a sliver that no plane triangle could become: refused before any solving
      }
    }
    SectionField section = SectionField.uniform(Section.isotropic(modulus, 0.3, thickness));
    terms.addAll(ShellTerms.growing(rest, grown, directors, section));
    return new TotalEnergy(terms, supports, directors, start, 1);
  }

  /** Everything but the shell itself; the same for the same seed. */
  private final class Loads extends RandomModel {
    private final int vertices = mesh.vertexCount();

    Loads(long seed) {
      super(org.apache.commons.rng.simple.RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
    }

    @Override
    TotalEnergy energy() {
      return RandomShell.this.energy();
    }

    List<EnergyTerm> terms() {
      List<EnergyTerm> terms = new ArrayList<>();
      DeadLoad.Builder dead = new DeadLoad.Builder(mesh.topology(), start);
      for (int k = 0; k < random.nextInt(3); k++) {
        double f = scale * force(-4, 3);
        dead.onVertex(random.nextInt(vertices), new double[] {f * between(-1, 1), 0, f});
      }
      terms.add(dead.build("points"));
      int[] faces = IntStream.range(0, mesh.topology().triangleCount()).toArray();
      if (chance(0.3)) {
        double p = scale * force(-4, 2);
        terms.add(
            new FollowerPressure("pressure", mesh.topology(), faces, start, p, new double[3]));
      }
      if (chance(0.3)) {
        terms.add(thread());
      }
      if (chance(0.2)) {
        terms.add(floor());
      }
      return terms;
    }

    private ElasticThread thread() {
      int a = random.nextInt(vertices);
      int b = (a + 1 + random.nextInt(vertices - 1)) % vertices;
      ElasticThread thread =
          new ElasticThread(
              "thread",
              List.of(new VertexPoint(a), new VertexPoint(b)),
              false,
              scale * power(0, 6));
      double length = thread.length(start);
      thread.tighten(length, between(0.1, 1) * length);
      return thread;
    }

    private ObstacleContact floor() {
      double lowest = Double.POSITIVE_INFINITY;
      for (int v = 0; v < vertices; v++) {
        lowest = Math.min(lowest, start[3 * v + 2]);
      }
      double[] areas = new double[vertices];
      Arrays.fill(areas, 1);
      return new ObstacleContact(
          "floor",
          new PlaneObstacle(
              new double[] {0, 0, lowest - between(0.01, 0.5)}, new double[] {0, 0, 1}),
          new BarrierLaw(between(0.02, 0.2), scale * power(-1, 3)),
          IntStream.range(0, vertices).toArray(),
          areas,
          new double[vertices]);
    }
  }
}
