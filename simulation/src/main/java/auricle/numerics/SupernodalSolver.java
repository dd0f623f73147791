package auricle.numerics;

import auricle.numerics.FactorTasks.Task;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Blocked left-looking factorisation A = L D Lᵀ by supernodes, without pivoting (Ng and Peyton
 * 1993, SIAM J. Sci. Comput. 14, 1034-1056; Duff and Reid 1983 for the symmetric indefinite
 * setting). The {@link Workers} present share its tasks; every column is made by the same
 * operations in the same order whoever makes it, so the result is the same to the last bit for the
 * same matrix and any number of threads.
 *
 * <p>A pivot counts as zero if it is no larger than the rounding errors may have made it: 8 sqrt(n)
 * rounding units of the largest entry of its column in A. (Errors of one unit in each of n rows
 * move the last pivot of a matrix with a null vector spread over all rows, a rigid motion say, by
 * about sqrt(n) units; 5 sqrt(n) were seen.)
 */
final class SupernodalSolver implements SymmetricSolver {
  /** Multiplications below which others would not have begun before all is done. */
  private static final double SMALL = 1e6;

  private final SymmetricPattern pattern;
  private final SymbolicFactor symbolic;
  private final SupernodeLayout layout;
  private final UpdateList updates;
  private final EntryMap entries;
  private final FactorTasks tasks;
  private final double[][] column;
  private final double[] pivot;
  private final FactorRun run;
  private final List<FactorPanel> panels = new ArrayList<>();
  private final TriangularSolve substitution;
  private boolean usable;

  /**
   * @param known what is known of a pattern that may be the same
   */
  SupernodalSolver(SymmetricPattern pattern, @Nullable SymbolicFactor known) {
    this.pattern = pattern;
    symbolic = SymbolicFactor.of(pattern, known);
    layout = symbolic.layout();
    updates = symbolic.updates();
    entries = symbolic.entries();
    tasks = symbolic.tasks();
    int n = pattern.size();
    column = new double[n][];
    for (int s = 0; s < layout.supernodes(); s++) {
      for (int k = 0; k < layout.width(s); k++) {
        column[layout.firstColumn(s) + k] = new double[layout.rows(s).length];
      }
    }
    pivot = new double[n];
    run = new FactorRun(layout.supernodes());
    substitution = new TriangularSolve(layout, column, pivot, layout.longest());
  }

  @Override
  public Inertia factorize(SymmetricMatrix matrix) {
    if (matrix.pattern() != pattern) {
      throw new IllegalArgumentException("the matrix is not on the pattern of this solver");
    }
    usable = false;
    Workers workers = tasks.work() < SMALL ? Workers.ALONE : Workers.present();
    while (panels.size() < workers.threads()) {
      double noise = 8 * Math.sqrt(pattern.size()) * Math.ulp(1.0);
      panels.add(new FactorPanel(layout, updates, entries, column, pivot, noise));
    }
    run.begin();
    double[] values = matrix.values();
    List<Task> list = tasks.tasks(workers.threads());
    workers.run(
        list.size(),
        (task, worker) -> run.make(list.get(task), panels.get(worker), values, layout));
    usable = run.broken() == Integer.MAX_VALUE;
    return inertia(Math.min(run.broken(), pattern.size()));
  }

  /** What holds for every matrix on the pattern. */
  SymbolicFactor symbolic() {
    return symbolic;
  }

  private Inertia inertia(int columns) {
    int positive = 0;
    for (int j = 0; j < columns; j++) {
      positive += pivot[j] > 0 ? 1 : 0;
    }
    return new Inertia(positive, columns - positive, usable ? -1 : layout.oldOf(columns));
  }

  @Override
  public void solve(double[] b, double[] x) {
    if (!usable) {
      throw new IllegalStateException("no usable factorisation to solve with");
    }
    substitution.solve(b, x);
  }
}
