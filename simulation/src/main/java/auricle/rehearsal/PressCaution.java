package auricle.rehearsal;

import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.assessment.Limit;
import auricle.material.MaterialRow;
import auricle.material.PressFit;
import auricle.material.UsedRow;
import auricle.plan.EarCase;
import auricle.plan.PressTest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The caution that goes with a press at the bedside outside of what was published. */
final class PressCaution {
  private PressCaution() {}

  /**
   * @param rows that the ear's tissue rests on; the one that a press is held to among them
   */
  static Optional<Caution> of(EarCase ear, List<UsedRow> rows) {
    return ear.tissue()
        .press()
        .flatMap(
            press ->
                rows.stream()
                    .map(UsedRow::row)
                    .filter(row -> row.slot().equals(PressFit.HELD_TO))
                    .findFirst()
                    .flatMap(row -> of(press, row)));
  }

  private static Optional<Caution> of(PressTest press, MaterialRow row) {
    double stiffness = press.force_n() / press.depth_mm();
    double low = row.spread().low();
    double high = row.spread().high();
    if (stiffness >= low && stiffness <= high) {
      return Optional.empty();
    }
    boolean soft = stiffness < low;
    String words =
        String.format(
            Locale.ROOT,
            "The press gave %.4f N/mm, %s than published (%.3f to %.3f); measure again, or take it that this ear is so",
            stiffness,
            soft ? "softer" : "firmer",
            low,
            high);
    Limit limit =
        new Limit(row.key(), soft ? low : high, "N/mm", row.source(), row.confidence().key());
    return Optional.of(
        new Caution(CautionKind.UNUSUAL_PRESS, words, stiffness, limit, "press_test"));
  }
}
