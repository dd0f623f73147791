package auricle.report;

import auricle.analysis.ShellSnapshot;
import auricle.analysis.StepResult;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes the shell at every load step, and the collection that strings the files together. */
public final class StepFiles {
  private final ResultFolder folder;
  private final String title;
  private final List<PvdWriter.Member> members = new ArrayList<>();

  /**
   * @param folder where to
   * @param title of the model, for the files
   */
  public StepFiles(ResultFolder folder, String title) {
    this.folder = folder;
    this.title = title;
  }

  /** Writes one step. */
  public void write(StepResult step, ShellSnapshot snapshot) throws IOException {
    String name = String.format(Locale.ROOT, "steps/step_%04d.vtu", step.number());
    String state = step.converged() ? "in equilibrium" : "NOT IN EQUILIBRIUM: " + step.reason();
    String note =
        "%s; load factor %s, %s. %s".formatted(title, step.loadFactor(), state, UseNotice.TEXT);
    folder.write(name, VtuWriter.write(snapshot, note));
    members.add(new PvdWriter.Member(step.number(), name));
  }

  /** Writes the collection. */
  public void finish() throws IOException {
    folder.write("steps.pvd", PvdWriter.write(members));
  }
}
