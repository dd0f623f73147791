package auricle.measurement;

import auricle.anatomy.Level;

/**
 * Height of an ear and the places of levels on it.
 *
 * @param lowest_mm z of the lowest point of the lobule
 * @param highest_mm z of the top of the helix
 */
record EarHeight(double lowest_mm, double highest_mm) {
  /** z of a share of the height, mm. */
  double z_mm(double level_percent) {
    return lowest_mm + (highest_mm - lowest_mm) * level_percent / 100;
  }

  /** z of a level, mm. */
  double z_mm(Level level) {
    return z_mm(level.heightPercent());
  }

  /** Share of the height, percent. */
  double percent(double z_mm) {
    return 100 * (z_mm - lowest_mm) / (highest_mm - lowest_mm);
  }

  /** From the lowest point to the top, mm. */
  double height_mm() {
    return highest_mm - lowest_mm;
  }
}
