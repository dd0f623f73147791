package auricle.diagnostics;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used; it carries every finding, not the first alone. */
public final class BadInputException extends Exception {
  private final transient List<Finding> findings;

  /**
   * @param findings what was found, at least one of them an error
   */
  public BadInputException(List<Finding> findings) {
    super(findings.stream().map(Finding::line).collect(Collectors.joining("\n")));
    this.findings = List.copyOf(findings);
  }

  /** Bad input with a single finding. */
  public BadInputException(Finding finding) {
    this(List.of(finding));
  }

  /** What was found, in order. */
  public List<Finding> findings() {
    return findings;
  }
}
