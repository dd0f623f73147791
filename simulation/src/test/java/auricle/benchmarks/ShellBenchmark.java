package auricle.benchmarks;

import auricle.energy.DeadLoad;
import auricle.energy.EnergyTerm;
import auricle.energy.ShellTerms;
import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.Supports;
import auricle.equilibrium.TotalEnergy;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Around;
import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Surfaces;
import auricle.mesh.Unknowns;
import auricle.numerics.Inertia;
import auricle.numerics.SymmetricMatrix;
import auricle.numerics.SymmetricSolver;
import auricle.numerics.SymmetricSolvers;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A clamped cylinder sector of the size of a planning mesh: energy, assembly, Newton step, whole
 * solution.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Dauricle.threads=1")
public class ShellBenchmark {
  /** Cells along each side; 28 gives 841 vertices. */
  @Param({"28"})
  public int cells;

  private TotalEnergy energy;
  private SymmetricMatrix hessian;
  private SymmetricSolver solver;
  private double[] x;
  private double[] gradient;
  private double[] step;

  /** Builds the problem in its rest state. */
  @Setup
  public void build() {
    energy = problem(cells);
    energy.setLoadFactor(0.1);
    x = energy.free();
    gradient = new double[x.length];
    step = new double[x.length];
    hessian = new SymmetricMatrix(energy.pattern());
    solver = SymmetricSolvers.create(energy.pattern());
  }

  private static TotalEnergy problem(int cells) {
    ShellMesh mesh =
        GridMesher.mesh(
            Surfaces.cylinder(15, 30, new Around(0, 2, false)), GridOptions.regular(cells, cells));
    Unknowns unknowns = mesh.topology().unknowns();
    Supports.Builder supports = new Supports.Builder(unknowns.size(), 3 * unknowns.vertexCount());
    for (int v : mesh.vertexSet("side_low").orElseThrow()) {
      for (int c = 0; c < 3; c++) {
        supports.fix(unknowns.vertex(v) + c);
      }
      supports.fix(unknowns.director(v)).fix(unknowns.director(v) + 1);
    }
    Directors directors = mesh.directors();
    RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    Section section = Section.isotropic(2, 0.4, 1);
    List<EnergyTerm> terms =
        new ArrayList<>(ShellTerms.of(rest, directors, SectionField.uniform(section)));
    DeadLoad.Builder load = new DeadLoad.Builder(mesh.topology(), mesh.positions());
    load.onVertex(mesh.vertexSet("end_high").orElseThrow().get(0), new double[] {0.05, -0.05, 0});
    terms.add(load.build("pull"));
    return new TotalEnergy(terms, supports.build(), directors, mesh.unknowns(), 1);
  }

  /** Energy alone, as a trial step needs it. */
  @Benchmark
  public double energyAlone() {
    return energy.value(x);
  }

  /** Energy, gradient and Hessian, assembled. */
  @Benchmark
  public double assembly() {
    return energy.derivatives(x, gradient, hessian);
  }

  /** Assembly, factorisation and solution. */
  @Benchmark
  public Inertia newtonStep() {
    energy.derivatives(x, gradient, hessian);
    Inertia inertia = solver.factorize(hessian);
    solver.solve(gradient, step);
    return inertia;
  }

  /** Everything from the mesh to the equilibrium under a pull that folds a corner over. */
  @Benchmark
  public LoadPath wholeSolution() {
    return new LoadSteps(problem(cells), StepSettings.USUAL, StepMonitor.NONE).run(1);
  }
}
