package auricle.numerics;

import org.jspecify.annotations.Nullable;

/**
 * A factorised Hessian, made positive definite where it is not: K + s M with M = diag|K| and s
 * found by a few trials, warm-started from the last one that was needed.
 *
 * <p>Scaling by the diagonal keeps s free of units and of the size of the unknowns (Nocedal and
 * Wright 2006, Numerical Optimization, algorithm 3.3, with the diagonal in place of the identity).
 */
final class ShiftedFactor {
  private static final double FIRST_SHIFT = 1e-6;
  private static final double GROWTH = 10;
  private static final int MOST_TRIALS = 14;

  private final SymmetricMatrix matrix;
  private final SupernodalSolver solver;
  private final double[] diagonal;
  private final double[] weight;
  private double shift;
  private double lastShift;
  private int negativePivots;
  private int trials;
  private boolean usable;

  /**
   * @param known what is known of a pattern that may be the same
   */
  ShiftedFactor(SymmetricPattern pattern, @Nullable SymbolicFactor known) {
    matrix = new SymmetricMatrix(pattern);
    solver = new SupernodalSolver(pattern, known);
    diagonal = new double[pattern.size()];
    weight = new double[pattern.size()];
  }

  /** What holds for every matrix on the pattern. */
  SymbolicFactor symbolic() {
    return solver.symbolic();
  }

  /** K, to be filled before {@link #factorize}; always without shift between calls. */
  SymmetricMatrix matrix() {
    return matrix;
  }

  /** Factorises K, and if it is not positive definite and {@code unstable} is false, K + s M. */
  void factorize(boolean unstable) {
    weigh();
    trials = 0;
    Inertia plain = attempt(0);
    negativePivots = plain.broken() ? -1 : plain.negative();
    if (plain.positiveDefinite()) {
      lastShift /= GROWTH * GROWTH;
    } else if (!unstable || plain.broken()) {
      raise(Math.max(lastShift / GROWTH, FIRST_SHIFT));
    }
  }

  /** Factorises again with a greater shift: shorter steps, nearer to the steepest descent. */
  void stiffen() {
    raise(Math.max(GROWTH * GROWTH * shift, FIRST_SHIFT));
  }

  private void raise(double from) {
    double s = from;
    for (int k = 0; k < MOST_TRIALS; k++) {
      if (attempt(s).positiveDefinite()) {
        lastShift = s;
        return;
      }
      s *= GROWTH;
    }
    usable = false;
  }

  private Inertia attempt(double s) {
    for (int i = 0; i < weight.length; i++) {
      matrix.values()[place(i)] = diagonal[i] + s * weight[i];
    }
    Inertia inertia = solver.factorize(matrix);
    for (int i = 0; i < weight.length; i++) {
      matrix.values()[place(i)] = diagonal[i];
    }
    shift = s;
    trials++;
    usable = !inertia.broken();
    return inertia;
  }

  private void weigh() {
    double largest = 0;
    for (int i = 0; i < weight.length; i++) {
      diagonal[i] = matrix.diagonal(i);
      largest = Math.max(largest, Math.abs(diagonal[i]));
    }
    double least = largest > 0 ? 1e-10 * largest : 1;
    for (int i = 0; i < weight.length; i++) {
      weight[i] = Math.max(Math.abs(diagonal[i]), least);
    }
  }

  private int place(int i) {
    return matrix.pattern().columnStart()[i];
  }

  /** Whether {@link #solve} may be called. */
  boolean usable() {
    return usable;
  }

  /** Whether the factor is that of K itself, and K positive definite. */
  boolean plain() {
    return usable && shift == 0 && negativePivots == 0;
  }

  /** x = (K + s M)⁻¹ b. */
  void solve(double[] b, double[] x) {
    solver.solve(b, x);
  }

  /** M_ii. */
  double weight(int i) {
    return weight[i];
  }

  /** s of the last factorisation, 0 if K itself was factorised. */
  double shift() {
    return shift;
  }

  /** Negative eigenvalues of K itself; -1 if its factorisation broke down. */
  int negativePivots() {
    return negativePivots;
  }

  /** Factorisations since the last call of {@link #factorize}, that one included. */
  int trials() {
    return trials;
  }
}
