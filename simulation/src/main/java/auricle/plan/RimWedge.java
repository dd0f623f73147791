package auricle.plan;

import java.util.List;

/**
 * Wedge taken through the whole thickness from the rim and simply closed.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param level_percent level of its middle on the rim, % of the height of the ear
 * @param width_mm at the rim, mm along it
 * @param depth_mm from the rim to its point, mm
 */
public record RimWedge(
    String name, boolean enabled, double level_percent, double width_mm, double depth_mm)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "rim_wedge";

  private static final DoseRange LEVEL = DoseRange.level("level_percent", "level on the rim");
  private static final DoseRange WIDTH =
      new DoseRange("width_mm", "width at the rim", "mm", 0.5, 15, 0.5, "it must still be closed");
  private static final DoseRange DEPTH =
      new DoseRange("depth_mm", "depth", "mm", 1, 25, 0.5, "the ear is not wider there");

  /** A narrow wedge in the upper rim; our own choice. */
  public static RimWedge usual(String name) {
    return new RimWedge(name, true, 75, 4, 10);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "rim wedge";
  }

  @Override
  public List<Dose> doses() {
    return List.of(LEVEL.at(level_percent), WIDTH.at(width_mm), DEPTH.at(depth_mm));
  }

  @Override
  public RimWedge with(String newName, boolean isEnabled, DoseValues d) {
    return new RimWedge(newName, isEnabled, d.get(LEVEL), d.get(WIDTH), d.get(DEPTH));
  }
}
