package auricle.numerics;

/** Makes direct solvers. */
public final class SymmetricSolvers {
  private SymmetricSolvers() {}

  /**
   * The project's own solver: fill-reducing ordering and symbolic factorisation are done here, once
   * for the pattern; matrices may be indefinite. It shares its work among the {@link Workers}
   * present; not safe for use by several callers at a time.
   *
   * @param pattern the pattern all matrices will be on
   */
  public static SymmetricSolver create(SymmetricPattern pattern) {
    return new SupernodalSolver(pattern, null);
  }

  /**
   * A library's solver on the same ordering, slower and for positive definite matrices alone: an
   * independent check. Its inertia says no more than whether the matrix was positive definite.
   *
   * @param pattern the pattern all matrices will be on
   */
  public static SymmetricSolver reference(SymmetricPattern pattern) {
    return new LibrarySolver(pattern);
  }
}
