package auricle.anatomy;

/** Which ear. Everything is computed as a right ear; a left one is mirrored only for display. */
public enum Side {
  /** The ear at the person's right. */
  RIGHT,
  /** The ear at the person's left. */
  LEFT
}
