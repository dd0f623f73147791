package auricle.numerics;

/**
 * Signs of the pivots of L D Lᵀ; by Sylvester's law these are the signs of the eigenvalues.
 *
 * @param positive number of positive pivots
 * @param negative number of negative pivots
 * @param brokenColumn column, in the caller's numbering, whose pivot was zero, to rounding, or no
 *     finite number; -1 if none
 */
public record Inertia(int positive, int negative, int brokenColumn) {
  /** Whether the factorisation broke down. */
  public boolean broken() {
    return brokenColumn >= 0;
  }

  /** Whether every pivot was positive. */
  public boolean positiveDefinite() {
    return !broken() && negative == 0;
  }
}
