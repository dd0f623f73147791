package auricle.scenario;

import auricle.plan.Bite;
import auricle.plan.Dose;
import auricle.plan.FoldSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Tie;
import auricle.plan.TiedOperation;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The steps of a plan as they stand in files. */
final class OperationNodes {
  private static final List<String> BITES =
      List.of("scapha_upper", "scapha_lower", "concha_upper", "concha_lower");

  private final double height_mm;

  private OperationNodes(double height_mm) {
    this.height_mm = height_mm;
  }

  static ArrayNode plan(Plan plan, double height_mm) {
    ArrayNode steps = JsonNodeFactory.instance.arrayNode();
    OperationNodes nodes = new OperationNodes(height_mm);
    plan.operations().forEach(o -> nodes.write(o, steps.addObject().putObject(o.kind())));
    return steps;
  }

  private void write(Operation operation, ObjectNode node) {
    node.put("name", operation.name());
    if (!operation.enabled()) {
      node.put("enabled", false);
    }
    if (operation instanceof Scoring scoring) {
      node.put("face", scoring.face().name().toLowerCase(Locale.ROOT));
    }
    if (operation instanceof FoldSuture suture) {
      bites(suture, node);
    } else {
      doses(operation, node);
    }
    if (operation instanceof TiedOperation tied) {
      Dose tie = tied.tie().dose();
      EarNodes.number(node.putObject("tie"), tie.key(), tie.value());
      node.put("thread", tied.thread());
    }
  }

  private static void doses(Operation operation, ObjectNode node) {
    for (Dose dose : operation.doses()) {
      boolean tie =
          operation instanceof TiedOperation tied && tied.tie().dose().key().equals(dose.key());
      if (!tie) {
        EarNodes.number(node, dose.key(), dose.value());
      }
    }
  }

  /** The short form where it says the same to the last digit, else all four bites. */
  private void bites(FoldSuture suture, ObjectNode node) {
    Bite upper = suture.scaphaUpper();
    double level = rounded(suture.level_percent());
    double width_mm =
        rounded((upper.level_percent() - suture.scaphaLower().level_percent()) * height_mm / 100);
    double concha_mm = suture.conchaUpper().fromFold_mm();
    Tie tie = suture.tie();
    FoldSuture square =
        FoldSuture.square(
            suture.name(),
            level,
            upper.fromFold_mm(),
            concha_mm,
            100 * width_mm / height_mm,
            tie,
            suture.thread());
    if (square.bites().equals(suture.bites())) {
      EarNodes.number(node, "level_percent", level);
      EarNodes.number(node, "scapha_from_fold_mm", upper.fromFold_mm());
      EarNodes.number(node, "concha_from_fold_mm", concha_mm);
      EarNodes.number(node, "bite_width_mm", width_mm);
    } else {
      fourBites(suture, node.putObject("bites"));
    }
  }

  private static void fourBites(FoldSuture suture, ObjectNode node) {
    for (int i = 0; i < BITES.size(); i++) {
      Bite bite = suture.bites().get(i);
      ObjectNode place = node.putObject(BITES.get(i));
      EarNodes.number(place, "level_percent", bite.level_percent());
      EarNodes.number(place, "from_fold_mm", bite.fromFold_mm());
    }
  }

  /** Without the last digits that arithmetic leaves. */
  private static double rounded(double value) {
    return Math.round(value * 1e6) / 1e6;
  }
}
