package auricle.plan;

import java.util.List;

/**
 * Rim made thinner or lower by shaving, without closure: its section is thinned.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param level_percent level of its middle on the rim, % of the height of the ear
 * @param length_mm along the rim, mm
 * @param depth_fraction taken away, over the local thickness
 */
public record RimShaving(
    String name, boolean enabled, double level_percent, double length_mm, double depth_fraction)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "rim_shaving";

  private static final DoseRange LEVEL = DoseRange.level("level_percent", "level on the rim");
  private static final DoseRange LENGTH =
      new DoseRange("length_mm", "length", "mm", 2, 80, 1, "the rim is not longer");
  private static final DoseRange DEPTH =
      new DoseRange(
          "depth_fraction",
          "depth",
          "of the thickness",
          0.05,
          0.8,
          0.05,
          "some of the cartilage has to stay");

  /** A third of the thickness along the upper rim; our own choice. */
  public static RimShaving usual(String name) {
    return new RimShaving(name, true, 80, 20, 0.35);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "rim shaving";
  }

  @Override
  public List<Dose> doses() {
    return List.of(LEVEL.at(level_percent), LENGTH.at(length_mm), DEPTH.at(depth_fraction));
  }

  @Override
  public RimShaving with(String newName, boolean isEnabled, DoseValues d) {
    return new RimShaving(newName, isEnabled, d.get(LEVEL), d.get(LENGTH), d.get(DEPTH));
  }
}
