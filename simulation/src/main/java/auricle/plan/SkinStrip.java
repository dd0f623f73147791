package auricle.plan;

import auricle.diagnostics.Finding;
import java.util.List;

/**
 * Strip of skin taken from the back of the ear and closed.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param fromLevel_percent lower end, % of the height of the ear
 * @param toLevel_percent upper end, % of the height of the ear
 * @param width_mm greatest width, mm
 */
public record SkinStrip(
    String name, boolean enabled, double fromLevel_percent, double toLevel_percent, double width_mm)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "skin_strip";

  private static final DoseRange FROM = DoseRange.level("from_level_percent", "lower end");
  private static final DoseRange TO = DoseRange.level("to_level_percent", "upper end");
  private static final DoseRange WIDTH =
      new DoseRange("width_mm", "greatest width", "mm", 1, 25, 0.5, "more skin is not there");

  /** 10 mm wide, the middle of the 5-15 mm published (Türk Plast Rekonstr Est Cer Derg 2020). */
  public static SkinStrip usual(String name) {
    return new SkinStrip(name, true, 25, 80, 10);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "posterior skin strip";
  }

  @Override
  public List<Dose> doses() {
    return List.of(FROM.at(fromLevel_percent), TO.at(toLevel_percent), WIDTH.at(width_mm));
  }

  @Override
  public SkinStrip with(String newName, boolean isEnabled, DoseValues d) {
    return new SkinStrip(newName, isEnabled, d.get(FROM), d.get(TO), d.get(WIDTH));
  }

  @Override
  public List<Finding> findings(String at) {
    return OperationCheck.band(this, fromLevel_percent, toLevel_percent, at);
  }
}
