package auricle.report;

import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.StepResult;
import auricle.rehearsal.ThreadState;
import java.util.List;

/** The threads as CSV: a row for each thread that is in after a step. */
final class ThreadsTable {
  private ThreadsTable() {}

  /** The file. */
  static String write(List<RehearsalResult> ears) {
    CsvText csv =
        new CsvText(
            List.of(
                "side",
                "step",
                "label",
                "converged",
                "thread",
                "suture",
                "tension_n",
                "slack",
                "length_mm",
                "knot_pull_n",
                "share_of_knot_pull",
                "tear_through_n",
                "share_of_tear_through"));
    for (RehearsalResult ear : ears) {
      for (int i = 0; i < ear.steps().size(); i++) {
        for (ThreadState thread : ear.steps().get(i).threads()) {
          csv.row(row(EarNames.key(ear), i, ear.steps().get(i), thread));
        }
      }
    }
    return csv.toString();
  }

  private static List<Object> row(String side, int number, StepResult step, ThreadState thread) {
    return List.of(
        side,
        number,
        step.label(),
        step.outcome().converged(),
        thread.name(),
        thread.suture(),
        thread.tension_n(),
        thread.slack(),
        thread.length_mm(),
        thread.knotPull_n(),
        thread.shareOfKnotPull(),
        thread.tearThrough_n(),
        thread.shareOfTearThrough());
  }
}
