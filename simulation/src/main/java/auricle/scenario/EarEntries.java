package auricle.scenario;

import auricle.anatomy.EarMeasurements;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.plan.EarCase;
import auricle.plan.EarMeasure;
import auricle.plan.Plan;
import auricle.plan.PressTest;
import auricle.yamlfile.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One ear from what a file says of it. */
final class EarEntries {
  private final EarPart part;
  private final boolean sound;
  private final Findings all;
  private final List<Finding> found = new ArrayList<>();

  /**
   * @param sound whether the schema had nothing to object; if it had, the plan is not judged as a
   *     whole, since steps may be missing in it
   * @param all what is wrong or doubtful is added here
   */
  EarEntries(EarPart part, boolean sound, Findings all) {
    this.part = part;
    this.sound = sound;
    this.all = all;
  }

  ScenarioEar ear() {
    EarMeasurements ear = measurements();
    Findings reading = new Findings();
    OperationEntries operations = new OperationEntries(height_mm(ear), reading);
    Plan plan = plan(operations);
    EarCase earCase =
        new EarCase(ear, TissueEntries.choice(part, press()), plan, TargetEntries.target(part));
    found.addAll(reading.list());
    found.addAll(sense(earCase, operations));
    Expected expected =
        new ExpectedEntries(plan, sound, found::add).expected(part.both("expected"));
    settle();
    return new ScenarioEar(earCase, expected);
  }

  private List<Finding> sense(EarCase earCase, OperationEntries operations) {
    if (sound && operations.complete() && part.find("plan").isPresent()) {
      return earCase.findings(part.at());
    }
    List<Finding> errors = new ArrayList<>(operations.findings());
    errors.addAll(earCase.withPlan(Plan.of()).findings(part.at()));
    return errors.stream().filter(Finding::isError).toList();
  }

  /** What was found, at its places; of one place only the first error is told. */
  private void settle() {
    for (Finding finding : found) {
      Finding settled = part.settle(finding);
      boolean told =
          all.list().stream().anyMatch(f -> f.isError() && f.where().equals(settled.where()));
      if (!told) {
        all.add(settled);
      }
    }
  }

  private EarMeasurements measurements() {
    if (part.find("ear").isEmpty() && sound) {
      found.add(missing("ear", "the ear: its measurements, or 'based_on: normal_adult'"));
    }
    boolean child =
        part.find("ear", "based_on").filter(e -> e.string().equals("normal_child")).isPresent();
    EarMeasurements normal = child ? EarMeasurements.normalChild() : EarMeasurements.normalAdult();
    EarMeasurements ear = normal.withSide(part.side());
    for (EarMeasure measure : EarMeasure.values()) {
      Optional<Entry> given = part.find("ear", measure.key());
      if (given.isPresent()) {
        ear = measure.with(ear, given.get().node().asDouble());
      }
    }
    return ear;
  }

  /** From which widths become levels; an impossible height, told elsewhere, is not used. */
  private static double height_mm(EarMeasurements ear) {
    return EarMeasure.HEIGHT.of(ear).nearestAllowed();
  }

  private Plan plan(OperationEntries operations) {
    Optional<Entry> steps = part.find("plan");
    if (steps.isEmpty() && sound) {
      found.add(missing("plan", "the steps of the operation in order, or [] for none"));
    }
    return steps.map(operations::plan).orElse(Plan.of());
  }

  private Finding missing(String section, String meaning) {
    String named = "'" + section + "'";
    return Finding.error(part.at(), named + " is missing", meaning, "Add " + named + ".");
  }

  private Optional<PressTest> press() {
    return part.find("press_test")
        .map(
            e ->
                new PressTest(
                    e.number("level_percent"), e.number("depth_mm"), e.number("force_n")));
  }
}
