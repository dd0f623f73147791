package auricle.plan;

/**
 * What a dose may be; with a value it becomes a {@link Dose}.
 *
 * @param key name in files, with its unit
 * @param label in plain words
 * @param unit as it is printed
 * @param low least value allowed
 * @param high greatest value allowed
 * @param step by which a control changes it
 * @param reason why the bounds are where they are
 */
record DoseRange(
    String key, String label, String unit, double low, double high, double step, String reason) {

  private static final String HEIGHT = "0 is the lowest point of the lobule, 100 the top of helix";
  private static final String PROFILE = "a profile from fold to rim or floor is shorter than that";
  private static final String WALL = "0 is the edge of the bowl's floor, 100 the fold line";

  /** A level of the ear, % of its height. */
  static DoseRange level(String key, String label) {
    return new DoseRange(key, label, "%", 0, 100, 1, HEIGHT);
  }

  /** A distance from the fold line along the profile, mm, + towards the rim. */
  static DoseRange fromFold(String key, String label) {
    return new DoseRange(key, label, "mm", -25, 25, 0.5, PROFILE);
  }

  /** A place on the wall of the bowl, % of the way up. */
  static DoseRange wall(String key, String label) {
    return new DoseRange(key, label, "%", 0, 100, 5, WALL);
  }

  Dose at(double value) {
    return new Dose(key, label, unit, value, low, high, step, reason);
  }
}
