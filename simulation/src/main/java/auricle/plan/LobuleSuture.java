package auricle.plan;

import java.util.List;

/**
 * Thread from the cauda helicis to the bowl, which sets the lobule back.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param caudaFromTip_mm bite on the cauda, mm from its tip along it
 * @param bowlLevel_percent level of the bite on the bowl, % of the height of the ear
 * @param bowlWall_percent where it lies on the wall: 0 the edge of the floor, 100 the fold line
 * @param tie gap between the two bites, or tension
 * @param thread row of the thread table
 */
public record LobuleSuture(
    String name,
    boolean enabled,
    double caudaFromTip_mm,
    double bowlLevel_percent,
    double bowlWall_percent,
    Tie tie,
    String thread)
    implements TiedOperation {

  /** Kind, as files name it. */
  public static final String KIND = "lobule_suture";

  private static final DoseRange CAUDA =
      new DoseRange(
          "cauda_from_tip_mm", "bite from the tip of the cauda", "mm", 0, 15, 0.5, "it ends there");
  private static final DoseRange LEVEL = DoseRange.level("bowl_level_percent", "level on the bowl");
  private static final DoseRange WALL =
      DoseRange.wall("bowl_wall_percent", "place on the bowl's wall");

  /** From near the tip of the cauda to the lower bowl; the doses are our own choice. */
  public static LobuleSuture usual(String name, Tie tie, String thread) {
    return new LobuleSuture(name, true, 2, 35, 40, tie, thread);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "lobule suture";
  }

  @Override
  public List<Dose> doses() {
    return List.of(
        CAUDA.at(caudaFromTip_mm),
        LEVEL.at(bowlLevel_percent),
        WALL.at(bowlWall_percent),
        tie.dose());
  }

  @Override
  public LobuleSuture with(String newName, boolean isEnabled, DoseValues d) {
    return new LobuleSuture(
        newName, isEnabled, d.get(CAUDA), d.get(LEVEL), d.get(WALL), tie.from(d), thread);
  }

  @Override
  public LobuleSuture withTie(Tie other) {
    return new LobuleSuture(
        name, enabled, caudaFromTip_mm, bowlLevel_percent, bowlWall_percent, other, thread);
  }

  @Override
  public LobuleSuture withThread(String other) {
    return new LobuleSuture(
        name, enabled, caudaFromTip_mm, bowlLevel_percent, bowlWall_percent, tie, other);
  }
}
