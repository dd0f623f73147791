package auricle.equilibrium;

/**
 * Something a reader of a load path should know.
 *
 * @param kind what happened
 * @param from λ before
 * @param to λ after
 * @param words the same in words
 */
public record PathEvent(Kind kind, double from, double to, String words) {
  /** What can happen. */
  public enum Kind {
    /** The branch followed came to an end or lost stability; the body moved to another at rest. */
    SNAP,
    /** λ turned back along the path: the most or least load that the branch carries. */
    LIMIT_POINT,
    /** Stability changed without λ turning back. */
    STABILITY_CHANGE
  }
}
