package auricle.numerics;

/**
 * Direct solver for symmetric sparse systems on one fixed pattern. The symbolic part is done once,
 * when the solver is made; {@link #factorize} only refills numbers and allocates nothing that grows
 * with the matrix.
 *
 * <p>A factorisation that failed cannot be overlooked: {@link #solve} refuses to run after one.
 */
public interface SymmetricSolver {
  /**
   * Factorises A = L D Lᵀ without pivoting.
   *
   * @param matrix a matrix on the pattern this solver was made for; it is not changed
   * @return signs of the pivots; {@link Inertia#broken()} if a pivot was zero, to rounding, or no
   *     finite number
   */
  Inertia factorize(SymmetricMatrix matrix);

  /**
   * Solves A x = b with the last factorisation. Positive definiteness is not asked for here; who
   * needs it looks at the inertia.
   *
   * @param b right-hand side, length n
   * @param x solution, length n; may be the same array as b
   * @throws IllegalStateException if there is no factorisation or the last one broke down
   */
  void solve(double[] b, double[] x);
}
