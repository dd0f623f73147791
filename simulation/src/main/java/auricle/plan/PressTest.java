package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;

/**
 * A press on the rim at the bedside: how far it went towards the head under what force. The
 * stiffness of the tissue is scaled to meet it.
 *
 * @param level_percent level on the rim, % of the height of the ear
 * @param depth_mm how far the rim went towards the head, mm
 * @param force_n force, N
 */
public record PressTest(double level_percent, double depth_mm, double force_n) {
  private static final DoseRange LEVEL = DoseRange.level("level_percent", "level on the rim");
  private static final DoseRange DEPTH =
      new DoseRange(
          "depth_mm", "depth of the press", "mm", 0.5, 20, 0.5, "the head is behind the ear");
  private static final DoseRange FORCE =
      new DoseRange(
          "force_n",
          "force of the press",
          "N",
          0.005,
          2,
          0.01,
          "published: 0.09-0.15 N at a quarter of the ear's width (Li 2025)");

  /** Everything that is wrong with it. {@code at} is its JSON pointer. */
  public List<Finding> findings(String at) {
    Findings findings = new Findings();
    for (Dose dose : List.of(LEVEL.at(level_percent), DEPTH.at(depth_mm), FORCE.at(force_n))) {
      if (!dose.allowed()) {
        findings.add(OperationCheck.outside(at + "/" + dose.key(), dose));
      }
    }
    return findings.list();
  }
}
