package auricle.plan;

import auricle.diagnostics.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * Strip of cartilage taken from the wall of the bowl and closed (conchal resection).
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param fromLevel_percent lower end, % of the height of the ear
 * @param toLevel_percent upper end, % of the height of the ear
 * @param wall_percent where its middle line runs on the wall: 0 the edge of the floor, 100 the fold
 *     line
 * @param width_mm greatest width, mm
 * @param taper share of its length over which it narrows to its two ends: 0 a rectangle, 1 a lens
 *     that narrows all the way from its middle
 */
public record BowlStrip(
    String name,
    boolean enabled,
    double fromLevel_percent,
    double toLevel_percent,
    double wall_percent,
    double width_mm,
    double taper)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "bowl_strip";

  /** Widest strip that texts on the technique give, mm; from memory, no source opened. */
  public static final double WIDEST_IN_TEXTS_MM = 8;

  private static final DoseRange FROM = DoseRange.level("from_level_percent", "lower end");
  private static final DoseRange TO = DoseRange.level("to_level_percent", "upper end");
  private static final DoseRange WALL = DoseRange.wall("wall_percent", "place on the bowl's wall");
  private static final DoseRange WIDTH =
      new DoseRange(
          "width_mm", "greatest width", "mm", 0.5, 12, 0.5, "the wall of the bowl is not deeper");
  private static final DoseRange TAPER =
      new DoseRange("taper", "share that narrows", "", 0, 1, 0.1, "it is a share of the length");

  /** A lens of 4 mm in the middle of the wall; 3-5 mm is what texts give, from memory. */
  public static BowlStrip usual(String name) {
    return new BowlStrip(name, true, 35, 65, 50, 4, 1);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "bowl strip";
  }

  @Override
  public List<Dose> doses() {
    return List.of(
        FROM.at(fromLevel_percent),
        TO.at(toLevel_percent),
        WALL.at(wall_percent),
        WIDTH.at(width_mm),
        TAPER.at(taper));
  }

  @Override
  public BowlStrip with(String newName, boolean isEnabled, DoseValues d) {
    return new BowlStrip(
        newName, isEnabled, d.get(FROM), d.get(TO), d.get(WALL), d.get(WIDTH), d.get(TAPER));
  }

  @Override
  public List<Finding> findings(String at) {
    List<Finding> findings =
        new ArrayList<>(OperationCheck.band(this, fromLevel_percent, toLevel_percent, at));
    if (width_mm > WIDEST_IN_TEXTS_MM) {
      findings.add(
          Finding.warning(
              at + "/width_mm",
              "a strip " + OperationCheck.number(width_mm, "mm") + " wide",
              "3-5 mm, at most about 8 mm",
              "So wide a strip over-corrects the middle (technique texts, from memory)."));
    }
    return List.copyOf(findings);
  }
}
