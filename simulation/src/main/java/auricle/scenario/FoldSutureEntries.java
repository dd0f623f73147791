package auricle.scenario;

import auricle.diagnostics.Findings;
import auricle.plan.Bite;
import auricle.plan.FoldSuture;
import auricle.plan.Tie;
import auricle.yamlfile.Entry;
import java.util.List;

/** Fold sutures, in the short form or with all four bites. */
final class FoldSutureEntries {
  /** Distance of the bite lines from the fold line where a file gives none, mm. */
  static final double USUAL_FROM_FOLD_MM = 4;

  /** Distance between upper and lower bite where a file gives none, mm. */
  static final double USUAL_BITE_WIDTH_MM = 8;

  private static final List<String> SHORT =
      List.of("level_percent", "scapha_from_fold_mm", "concha_from_fold_mm", "bite_width_mm");

  private final double height_mm;
  private final Findings findings;

  FoldSutureEntries(double height_mm, Findings findings) {
    this.height_mm = height_mm;
    this.findings = findings;
  }

  FoldSuture suture(Entry e, Tie tie, String thread) {
    List<String> given = SHORT.stream().filter(e::has).toList();
    if (e.has("bites") && !given.isEmpty()) {
      findings.error(
          e.get("bites").at(),
          "bites beside " + String.join(", ", given),
          "one of the two forms",
          "All four bites say where the suture is; remove the others.");
    }
    if (!e.has("bites") && !e.has("level_percent")) {
      findings.error(
          e.at(), "no level", "'level_percent', or 'bites'", "Say where the suture is taken.");
    }
    return e.has("bites") ? fourBites(e.get("bites"), tie, thread) : square(e, tie, thread);
  }

  private FoldSuture square(Entry e, Tie tie, String thread) {
    double width_mm = e.number("bite_width_mm", USUAL_BITE_WIDTH_MM);
    double level_percent = e.number("level_percent", 50);
    if (!(level_percent >= 0 && level_percent <= 100)) {
      findings.error(
          e.at() + "/level_percent",
          "a level of " + level_percent + " %",
          "0 to 100 %",
          "0 is the lowest point of the lobule, 100 the top of the helix.");
    }
    if (!(width_mm > 0 && width_mm <= 30)) {
      findings.error(
          e.at() + "/bite_width_mm",
          "bites " + width_mm + " mm apart",
          "more than 0, at most 30 mm",
          "It is the distance between the upper and the lower bite.");
    }
    return FoldSuture.square(
        "",
        level_percent,
        e.number("scapha_from_fold_mm", USUAL_FROM_FOLD_MM),
        e.number("concha_from_fold_mm", -USUAL_FROM_FOLD_MM),
        100 * Math.max(width_mm, 0.1) / height_mm,
        tie,
        thread);
  }

  private static FoldSuture fourBites(Entry bites, Tie tie, String thread) {
    return new FoldSuture(
        "",
        true,
        bite(bites.get("scapha_upper")),
        bite(bites.get("scapha_lower")),
        bite(bites.get("concha_upper")),
        bite(bites.get("concha_lower")),
        tie,
        thread);
  }

  private static Bite bite(Entry e) {
    return new Bite(e.number("level_percent"), e.number("from_fold_mm"));
  }
}
