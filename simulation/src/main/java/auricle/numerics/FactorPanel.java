package auricle.numerics;

import java.util.Arrays;

/** Makes columns of the factor, with the workspace of one thread. */
final class FactorPanel {
  private final SupernodeLayout layout;
  private final UpdateList updates;
  private final EntryMap entries;
  private final double[][] column;
  private final double[] pivot;
  private final double noise;
  private final double[] scale;
  private final double[][] work;
  private final int[] place;
  private final int[] relative;

  /**
   * @param column the factor, by permuted columns
   * @param pivot its pivots
   * @param noise a pivot counts as zero up to this share of the largest entry of its column
   */
  FactorPanel(
      SupernodeLayout layout,
      UpdateList updates,
      EntryMap entries,
      double[][] column,
      double[] pivot,
      double noise) {
    this.layout = layout;
    this.updates = updates;
    this.entries = entries;
    this.column = column;
    this.pivot = pivot;
    this.noise = noise;
    work = new double[RankUpdate.BLOCK][layout.longest()];
    scale = new double[layout.longest()];
    place = new int[layout.size()];
    relative = new int[layout.longest()];
  }

  /**
   * Makes columns from .. to - 1 of supernode s; the first a multiple of the size of a block.
   *
   * @return whether none broke down
   */
  boolean make(int s, int from, int to, double[] values, FactorRun run) {
    int[] rows = layout.rows(s);
    for (int i = 0; i < rows.length; i++) {
      place[rows[i]] = i;
    }
    load(s, from, to, values);
    boolean whole = update(s, from, to, run);
    for (int b = from; whole && b < to; b += RankUpdate.BLOCK) {
      int end = Math.min(b + RankUpdate.BLOCK, to);
      whole = eliminate(s, b, end, run);
      run.done(s, whole ? end : b);
    }
    return whole;
  }

  private void load(int s, int from, int to, double[] values) {
    int first = layout.firstColumn(s);
    for (int c = from; c < to; c++) {
      Arrays.fill(column[first + c], 0);
      scale[c] = entries.scatter(first + c, values, column[first + c]);
    }
  }

  /** Subtracts what earlier supernodes contribute, in their order. */
  private boolean update(int s, int from, int to, FactorRun run) {
    int first = layout.firstColumn(s);
    for (int u = updates.first(s); u < updates.first(s + 1); u++) {
      int source = updates.source(u);
      int[] rows = layout.rows(source);
      int a = updates.from(u);
      int e = updates.to(u);
      while (a < e && rows[a] < first + from) {
        a++;
      }
      while (a < e && rows[e - 1] >= first + to) {
        e--;
      }
      if (a < e) {
        if (!run.await(source, layout.width(source), first + from)) {
          return false;
        }
        apply(s, source, a, e);
      }
    }
    return true;
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

  /** Factorises loaded and updated columns. */
  private boolean eliminate(int s, int from, int to, FactorRun run) {
    int first = layout.firstColumn(s);
    int height = layout.rows(s).length;
    for (int k = 0; k < from; k += RankUpdate.BLOCK) {
      if (!run.await(s, k + RankUpdate.BLOCK, first + from)) {
        return false;
      }
      RankUpdate.subtract(
          column, -first, from, to, column, pivot, first + k, first + k + RankUpdate.BLOCK, height);
    }
    for (int c = from; c < to; c++) {
      double[] target = column[first + c];
      RankUpdate.subtractColumn(target, c, column, pivot, first + from, first + c, height);
      if (!(Math.abs(target[c]) > noise * scale[c]) || Double.isInfinite(target[c])) {
        run.breakAt(first + c);
        return false;
      }
      pivot[first + c] = target[c];
      ColumnKernels.scale(target, 1 / target[c], c + 1, height);
    }
    return true;
  }
}
