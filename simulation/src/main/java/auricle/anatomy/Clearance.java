package auricle.anatomy;

/**
 * Keeps the ear off the head: what would lie closer to it than the bed of the floor is held at
 * {@code BED − D (1 − exp((x − BED)/D))}, smooth and rising, so that it rests on the head.
 */
final class Clearance {
  private static final double YIELD = 0.65;

  private Clearance() {}

  /** Distance from the mastoid plane after holding off, mm. */
  static double of(double lateral) {
    double below = Math.min(0, lateral - Floor.BED);
    return Math.max(lateral, Floor.BED) - YIELD * (1 - Math.exp(below / YIELD));
  }

  /** Its slope with the distance before, 0 … 1. */
  static double slope(double lateral) {
    return Math.exp(Math.min(0, lateral - Floor.BED) / YIELD);
  }
}
