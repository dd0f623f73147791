package auricle.diagnostics;

import java.util.ArrayList;
import java.util.List;

/** Gathers findings while an input is read, so that all of them can be told at once. */
public final class Findings {
  private final List<Finding> list = new ArrayList<>();

  /** Adds a finding, unless the same is there already. */
  public void add(Finding finding) {
    if (!list.contains(finding)) {
      list.add(finding);
    }
  }

  /** Adds several findings. */
  public void addAll(Iterable<Finding> findings) {
    findings.forEach(this::add);
  }

  /** Adds a finding that stops the work. */
  public void error(String where, String found, String expected, String remedy) {
    add(Finding.error(where, found, expected, remedy));
  }

  /** Adds a finding that does not stop the work. */
  public void warning(String where, String found, String expected, String remedy) {
    add(Finding.warning(where, found, expected, remedy));
  }

  /** All findings so far, in the order in which they were met. */
  public List<Finding> list() {
    return List.copyOf(list);
  }

  /** Whether a finding stops the work. */
  public boolean hasErrors() {
    return list.stream().anyMatch(Finding::isError);
  }

  /**
   * Ends the reading if something stops the work.
   *
   * @throws BadInputException with every finding so far
   */
  public void stopIfErrors() throws BadInputException {
    if (hasErrors()) {
      throw new BadInputException(list);
    }
  }
}
