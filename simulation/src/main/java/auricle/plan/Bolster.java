package auricle.plan;

import java.util.List;

/**
 * A pad that holds the fold from outside and is taken off: it holds the two lines {@link #REACH_MM}
 * either side of the fold line no further apart than a gap.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param level_percent level of its middle, % of the height of the ear
 * @param gap_mm distance between the two lines that it holds, mm
 * @param days after which it is taken off
 */
public record Bolster(
    String name, boolean enabled, double level_percent, double gap_mm, double days)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "bolster";

  /** Distance of the lines that it holds from the fold line, mm; our own choice. */
  public static final double REACH_MM = 5;

  private static final DoseRange LEVEL = DoseRange.level("level_percent", "level");
  private static final DoseRange GAP =
      new DoseRange(
          "gap_mm", "gap that it holds", "mm", 0.5, 10, 0.25, "the lines are 10 mm apart at rest");
  private static final DoseRange DAYS =
      new DoseRange("days", "days until it is taken off", "days", 0.1, 365, 1, "a year at most");

  /** Held for a week, which is usual for bandages (McMurran 2014: 7-10 days). */
  public static Bolster usual(String name) {
    return new Bolster(name, true, 65, 7, 7);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "bolster";
  }

  @Override
  public List<Dose> doses() {
    return List.of(LEVEL.at(level_percent), GAP.at(gap_mm), DAYS.at(days));
  }

  @Override
  public Bolster with(String newName, boolean isEnabled, DoseValues d) {
    return new Bolster(newName, isEnabled, d.get(LEVEL), d.get(GAP), d.get(DAYS));
  }
}
