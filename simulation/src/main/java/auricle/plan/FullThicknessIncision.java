package auricle.plan;

import auricle.diagnostics.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A cut through the whole thickness, along the fold line: a free hinge, whose edges show from the
 * front.
 *
 * @param name of the step
 * @param enabled whether it is done
 * @param fromLevel_percent lower end, % of the height of the ear
 * @param toLevel_percent upper end, % of the height of the ear
 * @param fromFold_mm mm from the fold line, + towards the rim
 */
public record FullThicknessIncision(
    String name,
    boolean enabled,
    double fromLevel_percent,
    double toLevel_percent,
    double fromFold_mm)
    implements Operation {

  /** Kind, as files name it. */
  public static final String KIND = "full_thickness_incision";

  private static final DoseRange FROM = DoseRange.level("from_level_percent", "lower end");
  private static final DoseRange TO = DoseRange.level("to_level_percent", "upper end");
  private static final DoseRange OFFSET =
      DoseRange.fromFold("from_fold_mm", "distance from the fold");

  /** A cut on the fold line of the antihelix; the doses are our own choice. */
  public static FullThicknessIncision usual(String name) {
    return new FullThicknessIncision(name, true, 50, 80, 0);
  }

  @Override
  public String kind() {
    return KIND;
  }

  @Override
  public String words() {
    return "full-thickness incision";
  }

  @Override
  public List<Dose> doses() {
    return List.of(FROM.at(fromLevel_percent), TO.at(toLevel_percent), OFFSET.at(fromFold_mm));
  }

  @Override
  public FullThicknessIncision with(String newName, boolean isEnabled, DoseValues d) {
    return new FullThicknessIncision(newName, isEnabled, d.get(FROM), d.get(TO), d.get(OFFSET));
  }

  @Override
  public List<Finding> findings(String at) {
    List<Finding> findings =
        new ArrayList<>(OperationCheck.band(this, fromLevel_percent, toLevel_percent, at));
    findings.add(
        Finding.warning(
            at,
            "a cut through the whole thickness on the antihelix",
            "partial-thickness cuts from behind, whose edges do not show",
            "Its edges show from the front (common practice)."));
    return List.copyOf(findings);
  }
}
