package auricle.cli;

import auricle.report.UseNotice;
import auricle.verification.CaseResult;
import java.io.PrintWriter;
import java.util.Locale;

/** The table of the verify command, line by line as cases end. */
final class VerificationTable {
  private final PrintWriter out;
  private int cases;
  private int failed;

  VerificationTable(PrintWriter out) {
    this.out = out;
    line(
        "case",
        "probe",
        "points",
        "expected",
        "ours",
        "diff %",
        "allowed %",
        "unknowns",
        "ms",
        "ok",
        "source of the expected value (confidence)");
    out.flush();
  }

  private void line(Object... cells) {
    out.printf(Locale.ROOT, "%-40s %-14s %6s %13s %13s %9s %9s %9s %9s  %-4s %s%n", cells);
  }

  /** Prints a case: per probe the point that uses most of its tolerance. */
  void add(CaseResult result) {
    cases++;
    failed += result.passed() ? 0 : 1;
    for (CaseResult.Row row : result.rows()) {
      double expected = row.worst().expected();
      line(
          result.name(),
          row.probe(),
          row.points(),
          number("%.6g", expected),
          number("%.6g", row.worst().found()),
          expected == 0 ? "-" : number("%+.3f", 100 * row.relativeDifference()),
          expected == 0 ? "-" : number("%.3g", 100 * row.worst().allowed() / Math.abs(expected)),
          result.unknowns(),
          number("%.0f", result.milliseconds()),
          row.met() ? "yes" : "NO",
          row.worst().source() + " (" + row.worst().confidence().replace('_', ' ') + ")");
    }
    if (!result.converged()) {
      out.println("    NOT CONVERGED: " + result.outcome());
    }
    out.flush();
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  /** Prints the sum and the notice. */
  void close() {
    out.printf(
        "%d cases, %d within tolerance, %d not. Each row shows the point of the curve that uses most of its tolerance.%n",
        cases, cases - failed, failed);
    out.println(UseNotice.TEXT);
    out.flush();
  }
}
