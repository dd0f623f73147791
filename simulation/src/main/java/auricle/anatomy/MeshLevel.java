package auricle.anatomy;

import java.util.Locale;

/** How finely the one smooth surface is sampled; each level has about four times the vertices. */
public enum MeshLevel {
  /** About 600 to 1,000 vertices. */
  PLANNING(1),
  /** About 4,000. */
  FINE(2),
  /** About 16,000. */
  REFERENCE(4);

  private final int division;

  MeshLevel(int division) {
    this.division = division;
  }

  /** Steps along a line for each step of the planning mesh. */
  int division() {
    return division;
  }

  /** The name in files, lower case. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
