package auricle.anatomy;

/**
 * Where the auricle is joined to the head: the floor of the bowl with the foot of its wall and of
 * the tragus, the front of the helix at its root, and the front border of the lobule with the
 * notch.
 */
final class Bedding {
  private static final double ROOT_FROM = 1.215;
  private static final double ROOT_TO = 0.03;
  private static final double LOBULE_FROM = 1.01;
  private static final double LOBULE_TO = 1.105;
  private static final double FRONT_BORDER = 0.98;

  private Bedding() {}

  /** Whether a place on the chart is joined to the head. */
  static boolean holds(double around, double across) {
    boolean root = around > ROOT_FROM || around < ROOT_TO;
    boolean lobule = around > LOBULE_FROM && around < LOBULE_TO;
    return across <= Section.FOOT
        || (root && across >= Section.FOLD)
        || (lobule && across >= FRONT_BORDER);
  }
}
