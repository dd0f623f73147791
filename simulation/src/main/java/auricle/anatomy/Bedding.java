package auricle.anatomy;

/**
 * Where the auricle is joined to the head: the floor of the bowl with the foot of its wall, the
 * helix at its root, and the edge in front from the lobule over notch and tragus to the root.
 */
final class Bedding {
  private static final double FRONT_FROM = 1.01;
  private static final double ROOT_FROM = 1.215;
  private static final double ROOT_TO = 0.03;

  private Bedding() {}

  /** Whether a place on the chart is joined to the head. */
  static boolean holds(double around, double across) {
    boolean root = around > ROOT_FROM || around < ROOT_TO;
    boolean front = around > FRONT_FROM || root;
    return across <= Section.FOOT
        || (root && across >= Section.SCAPHA_END)
        || (front && across == 1);
  }
}
