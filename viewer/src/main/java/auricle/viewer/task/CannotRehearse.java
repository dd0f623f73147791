package auricle.viewer.task;

import java.util.List;

/** An ear or plan that cannot be worked out; says why in sentences. */
public final class CannotRehearse extends Exception {
  private final transient List<String> reasons;

  /** For these reasons, a sentence each. */
  public CannotRehearse(List<String> reasons) {
    super(String.join("\n", reasons));
    this.reasons = List.copyOf(reasons);
  }

  /** The reasons, a sentence each. */
  public List<String> reasons() {
    return reasons;
  }
}
