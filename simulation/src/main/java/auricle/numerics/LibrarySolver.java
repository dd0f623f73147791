package auricle.numerics;

import java.util.Arrays;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * The sparse Cholesky factorisation of EJML (up-looking) under our ordering: an independent check
 * on {@link SupernodalSolver} and its reference in the benchmarks.
 *
 * <p>It knows positive definite matrices alone: anything else counts as broken, and since the
 * library does not name the column, column 0 stands for it.
 */
final class LibrarySolver implements SymmetricSolver {
  private final SymmetricPattern pattern;
  private final SupernodeLayout layout;
  private final DMatrixSparseCSC permuted;
  private final int[] lowerSlot;
  private final int[] upperSlot;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> cholesky =
      LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
  private final DMatrixRMaj right;
  private final DMatrixRMaj left;
  private boolean usable;

  LibrarySolver(SymmetricPattern pattern) {
    this.pattern = pattern;
    layout = SupernodeLayout.of(pattern);
    int n = pattern.size();
    lowerSlot = new int[pattern.entryCount()];
    upperSlot = new int[pattern.entryCount()];
    permuted = new DMatrixSparseCSC(n, n, 2 * pattern.entryCount() - n);
    right = new DMatrixRMaj(n, 1);
    left = new DMatrixRMaj(n, 1);
    Adjacency full = new Adjacency(pattern);
    for (int j = 0; j < n; j++) {
      int old = layout.oldOf(j);
      IntList rows = new IntList();
      rows.add(j);
      for (int p = full.start[old]; p < full.start[old + 1]; p++) {
        rows.add(layout.newOf(full.neighbour[p]));
      }
      int[] sorted = rows.toArray();
      Arrays.sort(sorted);
      System.arraycopy(sorted, 0, permuted.nz_rows, permuted.col_idx[j], sorted.length);
      permuted.col_idx[j + 1] = permuted.col_idx[j] + sorted.length;
    }
    permuted.nz_length = permuted.col_idx[n];
    permuted.indicesSorted = true;
    findSlots();
  }

  private void findSlots() {
    int[] start = pattern.columnStart();
    for (int j = 0; j < pattern.size(); j++) {
      for (int p = start[j]; p < start[j + 1]; p++) {
        int a = layout.newOf(j);
        int b = layout.newOf(pattern.rowIndex()[p]);
        lowerSlot[p] = permuted.nz_index(a, b);
        upperSlot[p] = permuted.nz_index(b, a);
      }
    }
  }

  @Override
  public Inertia factorize(SymmetricMatrix matrix) {
    if (matrix.pattern() != pattern) {
      throw new IllegalArgumentException("the matrix is not on the pattern of this solver");
    }
    for (int p = 0; p < lowerSlot.length; p++) {
      permuted.nz_values[lowerSlot[p]] = matrix.values()[p];
      permuted.nz_values[upperSlot[p]] = matrix.values()[p];
    }
    usable = cholesky.setA(permuted);
    cholesky.setStructureLocked(true);
    return usable ? new Inertia(pattern.size(), 0, -1) : new Inertia(0, 0, 0);
  }

  @Override
  public void solve(double[] b, double[] x) {
    if (!usable) {
      throw new IllegalStateException("no usable factorisation to solve with");
    }
    for (int i = 0; i < pattern.size(); i++) {
      right.data[i] = b[layout.oldOf(i)];
    }
    cholesky.solve(right, left);
    for (int i = 0; i < pattern.size(); i++) {
      x[layout.oldOf(i)] = left.data[i];
    }
  }
}
