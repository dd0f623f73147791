package auricle.report;

import auricle.analysis.CheckResult;
import java.util.List;
import java.util.Locale;

/** Expected values against those found, as lines of text. */
public final class CheckTable {
  private CheckTable() {}

  /** One line a value, after a line of names. */
  public static String write(List<CheckResult> checks) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%-24s %12s %14s %14s %12s %s%n",
            "probe",
            "at",
            "expected",
            "found",
            "allowed",
            "met"));
    for (CheckResult c : checks) {
      text.append(
          String.format(
              Locale.ROOT,
              "%-24s %12s %14.6g %14.6g %12.3g %s%n",
              c.probe(),
              Double.isNaN(c.abscissa())
                  ? "last step"
                  : String.format(Locale.ROOT, "%.6g", c.abscissa()),
              c.expected(),
              c.found(),
              c.allowed(),
              c.met() ? "yes" : "NO"));
    }
    return text.toString();
  }
}
