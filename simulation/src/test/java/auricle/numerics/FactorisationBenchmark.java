package auricle.numerics;

import auricle.numerics.GridMatrix.Coupling;
import auricle.numerics.GridMatrix.Numbering;
import java.util.Arrays;
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
 * The stages of a direct solution on hinge-coupled grids with three unknowns a node: 1,800, 7,200
 * and 28,800 unknowns. The library's numeric stage stands beside ours.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(value = 1, jvmArgsAppend = "-Dauricle.threads=1")
public class FactorisationBenchmark {
  /** Grid of nodes, width x height. */
  @Param({"20x30", "40x60", "80x120"})
  public String grid = "20x30";

  private SymmetricMatrix matrix = GridMatrix.definite(1, 1, Coupling.HINGE, THREE, 7);
  private WeightedGraph graph = new UnknownGroups(matrix.pattern()).graph();
  private EliminationTree tree = FillReducingOrdering.best(graph);
  private SymmetricSolver ours = SymmetricSolvers.create(matrix.pattern());
  private SymmetricSolver library = SymmetricSolvers.reference(matrix.pattern());
  private double[] b = {};
  private double[] x = {};

  private static final Numbering THREE = Numbering.THREE_TOGETHER;

  /** Builds the matrix and the solvers. */
  @Setup
  public void setUp() {
    String[] side = grid.split("x", -1);
    matrix =
        GridMatrix.definite(
            Integer.parseInt(side[0]), Integer.parseInt(side[1]), Coupling.HINGE, THREE, 7);
    graph = new UnknownGroups(matrix.pattern()).graph();
    tree = FillReducingOrdering.best(graph);
    ours = SymmetricSolvers.create(matrix.pattern());
    library = SymmetricSolvers.reference(matrix.pattern());
    b = new double[matrix.pattern().size()];
    x = new double[b.length];
    Arrays.fill(b, 1);
    ours.factorize(matrix);
  }

  /** Grouping of the unknowns and both orderings. */
  @Benchmark
  public Object ordering() {
    return FillReducingOrdering.best(new UnknownGroups(matrix.pattern()).graph());
  }

  /** Supernodes, row structures and maps of a given order. */
  @Benchmark
  public Object symbolic() {
    SupernodeLayout layout = new SupernodeLayout(new UnknownGroups(matrix.pattern()), tree);
    return new Object[] {layout, new UpdateList(layout), new EntryMap(matrix.pattern(), layout)};
  }

  /** Our numeric factorisation. */
  @Benchmark
  public Object numeric() {
    return ours.factorize(matrix);
  }

  /** The library's numeric factorisation under the same order. */
  @Benchmark
  public Object numericOfLibrary() {
    return library.factorize(matrix);
  }

  /** One right-hand side. */
  @Benchmark
  public double[] solve() {
    ours.solve(b, x);
    return x;
  }
}
