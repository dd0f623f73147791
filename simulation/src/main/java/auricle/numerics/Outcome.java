package auricle.numerics;

/** How a solution ended. */
public enum Outcome {
  /** Forces balance to the stated tolerance, at a minimum unless unstable points were asked for. */
  CONVERGED,
  /** No further progress: no lower value found, iterations used up, or the problem is singular. */
  STALLED,
  /** The unknowns ran away or the value is not a number. */
  DIVERGED,
  /** Ended because the caller asked for it. */
  CANCELLED
}
