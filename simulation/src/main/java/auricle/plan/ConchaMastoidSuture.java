package auricle.plan;

import java.util.List;

/**
 * Thread from the bowl to the periosteum of the mastoid.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param level_percent level of its bites on the bowl, % of the height of the ear
 * @param wall_percent where they lie on the wall: 0 the edge of the floor, 100 the fold line
 * @param span_mm distance between its two bites on the bowl, mm
 * @param mastoidPosterior_mm how far behind the centre of the bowl's floor it is anchored, mm
 * @param mastoidLevel_percent level of the anchor, % of the height of the ear
 * @param tie gap between bowl and anchor, or tension
 * @param thread row of the thread table
 */
public record ConchaMastoidSuture(
    String name,
    boolean enabled,
    double level_percent,
    double wall_percent,
    double span_mm,
    double mastoidPosterior_mm,
    double mastoidLevel_percent,
    Tie tie,
    String thread)
    implements TiedOperation {

  /** Kind, as files name it. */
  public static final String KIND = "concha_mastoid_suture";

  private static final DoseRange LEVEL = DoseRange.level("level_percent", "level on the bowl");
  private static final DoseRange WALL = DoseRange.wall("wall_percent", "place on the bowl's wall");
  private static final DoseRange SPAN =
      new DoseRange(
          "span_mm", "distance between its bites", "mm", 1, 20, 0.5, "the bowl is not longer");
  private static final DoseRange POSTERIOR =
      new DoseRange(
          "mastoid_posterior_mm",
          "anchor behind the bowl's floor",
          "mm",
          0,
          50,
          1,
          "the mastoid ends there");
  private static final DoseRange ANCHOR =
      DoseRange.level("mastoid_level_percent", "level of the anchor");

  /** At the middle of the bowl, anchored 15 mm behind its floor; the doses are our own choice. */
  public static ConchaMastoidSuture usual(String name, Tie tie, String thread) {
    return new ConchaMastoidSuture(name, true, 50, 50, 6, 15, 50, tie, thread);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "concha-mastoid suture";
  }

  @Override
  public List<Dose> doses() {
    return List.of(
        LEVEL.at(level_percent),
        WALL.at(wall_percent),
        SPAN.at(span_mm),
        POSTERIOR.at(mastoidPosterior_mm),
        ANCHOR.at(mastoidLevel_percent),
        tie.dose());
  }

  @Override
  public ConchaMastoidSuture with(String newName, boolean isEnabled, DoseValues d) {
    return new ConchaMastoidSuture(
        newName,
        isEnabled,
        d.get(LEVEL),
        d.get(WALL),
        d.get(SPAN),
        d.get(POSTERIOR),
        d.get(ANCHOR),
        tie.from(d),
        thread);
  }

  @Override
  public ConchaMastoidSuture withTie(Tie other) {
    return new ConchaMastoidSuture(
        name,
        enabled,
        level_percent,
        wall_percent,
        span_mm,
        mastoidPosterior_mm,
        mastoidLevel_percent,
        other,
        thread);
  }

  @Override
  public ConchaMastoidSuture withThread(String other) {
    return new ConchaMastoidSuture(
        name,
        enabled,
        level_percent,
        wall_percent,
        span_mm,
        mastoidPosterior_mm,
        mastoidLevel_percent,
        tie,
        other);
  }
}
