package auricle.cli;

import auricle.diagnostics.Finding;
import java.io.PrintWriter;
import java.util.List;

/** Findings as every command prints them: one a line. */
final class FindingLines {
  private FindingLines() {}

  static void print(List<Finding> findings, PrintWriter to) {
    findings.forEach(f -> to.println((f.isError() ? "error: " : "warning: ") + f.line()));
    to.flush();
  }
}
