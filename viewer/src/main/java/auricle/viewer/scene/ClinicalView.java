package auricle.viewer.scene;

/** The directions from which ears are judged; angles in degrees around a right ear. */
public enum ClinicalView {
  /** Straight at the side of the head. */
  SIDE("Side", 1, 0, 0),
  /** Straight at the face. */
  FRONT("Front", 2, 90, 0),
  /** From behind the head, at the posterior face of the ear. */
  BACK("Back", 3, -115, 4),
  /** Down on the head. */
  ABOVE("Above", 4, 0, 89.9),
  /** Up at the lobule. */
  BELOW("Below", 5, 0, -89.9),
  /** Between side and front, a little from above. */
  THREE_QUARTER("Three-quarter", 6, 48, 12);

  private final String label;
  private final int digit;
  private final double around_deg;
  private final double up_deg;

  ClinicalView(String label, int digit, double around_deg, double up_deg) {
    this.label = label;
    this.digit = digit;
    this.around_deg = around_deg;
    this.up_deg = up_deg;
  }

  /** Name as shown. */
  public String label() {
    return label;
  }

  /** Angle from the side (0) towards the front (90), deg. */
  public double around_deg() {
    return around_deg;
  }

  /** Angle above the horizontal, deg. */
  public double up_deg() {
    return up_deg;
  }

  /** The digit key that shows it: 1 to 6. */
  public int digit() {
    return digit;
  }
}
