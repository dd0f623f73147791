package auricle.numerics;

import java.util.Arrays;

/**
 * Blocked left-looking factorisation A = L D Lᵀ by supernodes, without pivoting (Ng and Peyton
 * 1993, SIAM J. Sci. Comput. 14, 1034-1056; Duff and Reid 1983 for the symmetric indefinite
 * setting). Single-threaded; the result is the same to the last bit for the same matrix.
 *
 * <p>A pivot counts as zero if it is no larger than the rounding errors may have made it: 8 sqrt(n)
 * rounding units of the largest entry of its column in A. (Errors of one unit in each of n rows
 * move the last pivot of a matrix with a null vector spread over all rows, a rigid motion say, by
 * about sqrt(n) units; 5 sqrt(n) were seen.)
 */
final class SupernodalSolver implements SymmetricSolver {
  private final SymmetricPattern pattern;
  private final SupernodeLayout layout;
  private final UpdateList updates;
  private final EntryMap entries;
  private final double[][] column;
  private final double[] pivot;
  private final double[] scale;
  private final double noise;
  private final double[][] work;
  private final int[] place;
  private final int[] relative;
  private final TriangularSolve substitution;
  private int positive;
  private boolean usable;

  SupernodalSolver(SymmetricPattern pattern) {
    this.pattern = pattern;
    layout = SupernodeLayout.of(pattern);
    updates = new UpdateList(layout);
    entries = new EntryMap(pattern, layout);
    int n = pattern.size();
    column = new double[n][];
    int longest = 0;
    for (int s = 0; s < layout.supernodes(); s++) {
      int height = layout.rows(s).length;
      longest = Math.max(longest, height);
      for (int k = 0; k < layout.width(s); k++) {
        column[layout.firstColumn(s) + k] = new double[height];
      }
    }
    pivot = new double[n];
    scale = new double[n];
    noise = 8 * Math.sqrt(n) * Math.ulp(1.0);
    work = new double[RankUpdate.BLOCK][longest];
    place = new int[n];
    relative = new int[longest];
    substitution = new TriangularSolve(layout, column, pivot, longest);
  }

  @Override
  public Inertia factorize(SymmetricMatrix matrix) {
    if (matrix.pattern() != pattern) {
      throw new IllegalArgumentException("the matrix is not on the pattern of this solver");
    }
    usable = false;
    positive = 0;
    for (int s = 0; s < layout.supernodes(); s++) {
      load(s, matrix.values());
      for (int u = updates.first(s); u < updates.first(s + 1); u++) {
        apply(s, updates.source(u), updates.from(u), updates.to(u));
      }
      int broken = eliminate(s);
      if (broken >= 0) {
        return new Inertia(positive, broken - positive, layout.oldOf(broken));
      }
    }
    usable = true;
    return new Inertia(positive, pattern.size() - positive, -1);
  }

  private void load(int s, double[] values) {
    int first = layout.firstColumn(s);
    for (int j = first; j < first + layout.width(s); j++) {
      Arrays.fill(column[j], 0);
      scale[j] = entries.scatter(j, values, column[j]);
    }
    int[] rows = layout.rows(s);
    for (int i = 0; i < rows.length; i++) {
      place[rows[i]] = i;
    }
  }

  /** Subtracts from supernode s what supernode t contributes by its rows from .. to - 1. */
  private void apply(int s, int t, int from, int to) {
    int[] rows = layout.rows(t);
    for (int i = from; i < rows.length; i++) {
      relative[i] = place[rows[i]];
    }
    int first = layout.firstColumn(s);
    int firstSource = layout.firstColumn(t);
    int endSource = firstSource + layout.width(t);
    for (int c = from; c < to; c += RankUpdate.BLOCK) {
      int end = Math.min(c + RankUpdate.BLOCK, to);
      for (int k = c; k < end; k++) {
        Arrays.fill(work[k - c], k, rows.length, 0);
      }
      RankUpdate.subtract(work, c, c, end, column, pivot, firstSource, endSource, rows.length);
      for (int k = c; k < end; k++) {
        ColumnKernels.scatterAdd(
            work[k - c], relative, column[first + relative[k]], k, rows.length);
      }
    }
  }

  /** Factorises the loaded and updated supernode; the permuted column that broke down, or -1. */
  private int eliminate(int s) {
    int first = layout.firstColumn(s);
    int width = layout.width(s);
    int height = layout.rows(s).length;
    for (int b = 0; b < width; b += RankUpdate.BLOCK) {
      int end = Math.min(b + RankUpdate.BLOCK, width);
      RankUpdate.subtract(column, -first, b, end, column, pivot, first, first + b, height);
      for (int c = b; c < end; c++) {
        double[] target = column[first + c];
        RankUpdate.subtractColumn(target, c, column, pivot, first + b, first + c, height);
        if (!(Math.abs(target[c]) > noise * scale[first + c]) || Double.isInfinite(target[c])) {
          return first + c;
        }
        accept(first + c, target, c, height);
      }
    }
    return -1;
  }

  private void accept(int j, double[] target, int c, int height) {
    pivot[j] = target[c];
    positive += target[c] > 0 ? 1 : 0;
    ColumnKernels.scale(target, 1 / target[c], c + 1, height);
  }

  @Override
  public void solve(double[] b, double[] x) {
    if (!usable) {
      throw new IllegalStateException("no usable factorisation to solve with");
    }
    substitution.solve(b, x);
  }
}
