package auricle.viewer.task;

import auricle.diagnostics.Finding;
import java.util.List;

/** An ear or plan that cannot be worked out; says why. */
public final class CannotRehearse extends Exception {
  private final transient List<Finding> findings;

  /** For these reasons, with the places that they are about. */
  public CannotRehearse(List<Finding> findings) {
    super(String.join("\n", findings.stream().map(Finding::line).toList()));
    this.findings = List.copyOf(findings);
  }

  /** The reasons. */
  public List<Finding> findings() {
    return findings;
  }
}
