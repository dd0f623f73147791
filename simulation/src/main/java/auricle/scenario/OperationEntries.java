package auricle.scenario;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.plan.Bolster;
import auricle.plan.BowlStrip;
import auricle.plan.CaudaExcision;
import auricle.plan.ConchaMastoidSuture;
import auricle.plan.Dose;
import auricle.plan.Face;
import auricle.plan.FoldSuture;
import auricle.plan.FullThicknessIncision;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.RimShaving;
import auricle.plan.RimWedge;
import auricle.plan.Scoring;
import auricle.plan.SkinStrip;
import auricle.plan.Tie;
import auricle.yamlfile.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The steps of a plan. */
final class OperationEntries {
  /** Row of the thread table that is used where a file names none. */
  static final String USUAL_THREAD = "polyester_4_0";

  private static final Set<String> TIED =
      Set.of(FoldSuture.KIND, ConchaMastoidSuture.KIND, LobuleSuture.KIND);

  private final double height_mm;
  private final Findings reading;
  private final List<Finding> findings = new ArrayList<>();
  private int skipped;

  /**
   * @param height_mm of the ear, from which widths in mm become levels in %
   * @param reading what is wrong in the way a step is written is added here
   */
  OperationEntries(double height_mm, Findings reading) {
    this.height_mm = height_mm;
    this.reading = reading;
  }

  Plan plan(Entry steps) {
    Plan plan = Plan.of();
    for (Entry item : steps.items()) {
      if (whole(item)) {
        Operation operation = operation(item.onlyKey(), item.only(), plan);
        findings.addAll(operation.findings(item.only().at()));
        plan = plan.add(operation);
      } else {
        skipped++;
      }
    }
    return plan;
  }

  /** Whether the schema left enough of a step to read it. */
  private static boolean whole(Entry item) {
    if (item.keys().size() != 1 || !item.only().node().isObject()) {
      return false;
    }
    Entry tie = item.only().get("tie");
    return !TIED.contains(item.onlyKey()) || tie.has("gap_mm") || tie.has("tension_n");
  }

  /** Whether every step could be read. */
  boolean complete() {
    return skipped == 0 && !reading.hasErrors();
  }

  /** What is wrong with the steps taken by themselves. */
  List<Finding> findings() {
    return findings;
  }

  private Operation operation(String kind, Entry e, Plan before) {
    Operation operation = usual(kind, e);
    for (Dose dose : operation.doses()) {
      if (e.has(dose.key())) {
        operation = operation.withDose(dose.key(), e.number(dose.key()));
      }
    }
    String name = e.text("name", before.freeName(operation.words()));
    return operation.withName(name).withEnabled(!e.has("enabled") || e.flag("enabled"));
  }

  private Operation usual(String kind, Entry e) {
    return switch (kind) {
      case FoldSuture.KIND ->
          new FoldSutureEntries(height_mm, reading).suture(e, tie(e), thread(e));
      case ConchaMastoidSuture.KIND -> ConchaMastoidSuture.usual("", tie(e), thread(e));
      case LobuleSuture.KIND -> LobuleSuture.usual("", tie(e), thread(e));
      case Scoring.KIND -> Scoring.usual("").withFace(face(e));
      case FullThicknessIncision.KIND -> FullThicknessIncision.usual("");
      case BowlStrip.KIND -> BowlStrip.usual("");
      case CaudaExcision.KIND -> CaudaExcision.usual("");
      case SkinStrip.KIND -> SkinStrip.usual("");
      case RimWedge.KIND -> RimWedge.usual("");
      case RimShaving.KIND -> RimShaving.usual("");
      case Bolster.KIND -> Bolster.usual("");
      default -> throw new IllegalStateException("no reader for " + e.at());
    };
  }

  private static Face face(Entry e) {
    return e.text("face").equals("anterior") ? Face.ANTERIOR : Face.POSTERIOR;
  }

  private static String thread(Entry e) {
    return e.text("thread", USUAL_THREAD);
  }

  private Tie tie(Entry e) {
    Entry tie = e.get("tie");
    if (tie.has("gap_mm") && tie.has("tension_n")) {
      reading.error(
          tie.at(),
          "gap_mm beside tension_n",
          "one of the two",
          "A thread is tied to a gap or at a tension; the other comes out.");
    }
    return tie.has("tension_n")
        ? new Tie.Tension(tie.number("tension_n"))
        : new Tie.Gap(tie.number("gap_mm"));
  }
}
