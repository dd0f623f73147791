package auricle.viewer.viewmodel;

import auricle.viewer.task.EarMap;
import auricle.viewer.task.EarMap.OnTriangle;

/**
 * A place of a step that can be dragged over the ear.
 *
 * @param step index of the step in the plan
 * @param name in words: "upper scapha bite"
 * @param levelKey dose that holds its level, %
 * @param acrossKey dose that holds its place across the ear
 * @param level value of the first
 * @param across value of the second: mm from the fold, or % of the bowl's wall
 * @param onWall whether the second counts on the wall of the bowl
 */
public record Handle(
    int step,
    String name,
    String levelKey,
    String acrossKey,
    double level,
    double across,
    boolean onWall) {

  /** Where it lies. */
  public OnTriangle place(EarMap map) {
    return place(map, level, across);
  }

  /** Where it would lie at other values. */
  public OnTriangle place(EarMap map, double otherLevel, double otherAcross) {
    return onWall ? map.onWall(otherLevel, otherAcross) : map.besideFold(otherLevel, otherAcross);
  }

  /** Its place in words. */
  public String words() {
    return words(level, across);
  }

  /** Other values in words. */
  public String words(double otherLevel, double otherAcross) {
    String level = String.format(java.util.Locale.ROOT, "level %.0f %%", otherLevel);
    return onWall
        ? String.format(java.util.Locale.ROOT, "%s, %.0f %% up the wall", level, otherAcross)
        : String.format(
            java.util.Locale.ROOT,
            "%s, %.1f mm from the fold towards the %s",
            level,
            Math.abs(otherAcross),
            otherAcross < 0 ? "bowl" : "rim");
  }
}
