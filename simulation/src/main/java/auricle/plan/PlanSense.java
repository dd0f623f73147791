package auricle.plan;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;

/**
 * What the trade would say to a plan as a whole before anything is computed: warnings, each with
 * its source and how sure it is. Nothing here stops the work.
 */
final class PlanSense {
  private final Plan plan;
  private final double cartilageThickness_mm;
  private final String at;
  private final Findings findings = new Findings();

  /**
   * @param at JSON pointer of the list of operations
   */
  PlanSense(Plan plan, double cartilageThickness_mm, String at) {
    this.plan = plan;
    this.cartilageThickness_mm = cartilageThickness_mm;
    this.at = at;
  }

  List<Finding> findings() {
    if (plan.enabled().isEmpty()) {
      warn(at, "a plan in which nothing is done", "one operation or more", "");
    }
    spans();
    reliedOnAlone();
    lobuleLast();
    return findings.list();
  }

  /** Gruber 2005: 6-8 mm for 0.5 mm thick cartilage, 8-10 mm for 1.5 mm; between them, a line. */
  private void spans() {
    double least_mm = 6 + 2 * (cartilageThickness_mm - 0.5);
    double most_mm = least_mm + 2;
    for (int i = 0; i < plan.operations().size(); i++) {
      if (plan.operations().get(i) instanceof FoldSuture suture && suture.enabled()) {
        double span_mm = suture.span_mm();
        if (span_mm < least_mm || span_mm > most_mm) {
          warn(
              plan.pointer(at, i),
              "a span of " + number(span_mm) + " between the bite lines of '" + suture.name() + "'",
              number(least_mm) + " to " + number(most_mm) + " for cartilage of this thickness",
              span_mm > most_mm
                  ? "Too wide a mattress suture is unstable (Gruber 2005, septal cartilage)."
                  : "Too narrow a mattress suture has no effect (Gruber 2005, septal cartilage).");
        }
      }
    }
  }

  private void reliedOnAlone() {
    boolean folds = has(FoldSuture.class);
    boolean lasting = folds || has(BowlStrip.class);
    if (has(Scoring.class) && !folds) {
      warn(
          at,
          "scoring without fold sutures",
          "fold sutures that hold what the scoring lets bend",
          "Scoring alone holds worst (Mandal 2006: recurrence 11.0 % against 8.0 %).");
    }
    if (has(SkinStrip.class) && !lasting && !has(ConchaMastoidSuture.class)) {
      warn(
          at,
          "a skin strip alone",
          "work on the cartilage",
          "Skin alone does not hold the ear; it stretches (common practice).");
    }
    if (has(ConchaMastoidSuture.class) && !lasting) {
      warn(
          at,
          "a concha-mastoid suture alone",
          "a bowl strip where the bowl is deep",
          "Alone it does not last on a deep bowl (common practice).");
    }
    if (has(Bolster.class) && !folds) {
      warn(
          at,
          "a bolster without fold sutures",
          "fold sutures",
          "Of the bend that a bolster alone holds little is left (Oliaei 2013, rabbit ear).");
    }
  }

  /** The lobule is set last, after the upper and middle poles (common practice). */
  private void lobuleLast() {
    int last = -1;
    for (int i = 0; i < plan.operations().size(); i++) {
      Operation operation = plan.operations().get(i);
      if (operation.enabled()
          && (operation instanceof FoldSuture || operation instanceof BowlStrip)) {
        last = i;
      }
    }
    for (int i = 0; i < last; i++) {
      if (plan.operations().get(i) instanceof LobuleSuture suture && suture.enabled()) {
        warn(
            plan.pointer(at, i),
            "the lobule tied before '" + plan.operations().get(last).name() + "'",
            "the lobule last, after the upper and middle poles",
            "Setting these back moves the lobule again (common practice).");
      }
    }
  }

  private boolean has(Class<? extends Operation> kind) {
    return !plan.enabled(kind).isEmpty();
  }

  private void warn(String where, String found, String expected, String remedy) {
    findings.warning(where, found, expected, remedy);
  }

  private static String number(double value_mm) {
    return OperationCheck.number(Math.round(value_mm * 10) / 10.0, "mm");
  }
}
