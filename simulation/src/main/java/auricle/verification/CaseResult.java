package auricle.verification;

import auricle.analysis.AnalysisResult;
import auricle.analysis.CheckResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a verification case gave.
 *
 * @param name of the case
 * @param title what it is
 * @param converged whether every step was reached
 * @param outcome in words
 * @param unknowns number of free unknowns
 * @param milliseconds from reading the model to the last check
 * @param rows one a probe that has expected values
 */
public record CaseResult(
    String name,
    String title,
    boolean converged,
    String outcome,
    int unknowns,
    double milliseconds,
    List<Row> rows) {

  /**
   * The values of one probe against those expected.
   *
   * @param probe its name
   * @param points how many values are compared
   * @param worst the comparison that uses most of what is allowed
   */
  public record Row(String probe, int points, CheckResult worst) {
    /** Whether every value is met. */
    public boolean met() {
      return worst.met();
    }

    /** Difference as a fraction of the expected value, at the worst point. */
    public double relativeDifference() {
      return (worst.found() - worst.expected()) / Math.abs(worst.expected());
    }
  }

  static CaseResult of(String name, String title, AnalysisResult result, long nanoseconds) {
    Map<String, List<CheckResult>> byProbe = new LinkedHashMap<>();
    for (CheckResult check : result.checks()) {
      byProbe.computeIfAbsent(check.probe(), p -> new ArrayList<>()).add(check);
    }
    List<Row> rows = new ArrayList<>();
    byProbe.forEach((probe, checks) -> rows.add(new Row(probe, checks.size(), worst(checks))));
    return new CaseResult(
        name,
        title,
        result.converged(),
        result.outcome(),
        result.size().freeUnknowns(),
        nanoseconds / 1e6,
        List.copyOf(rows));
  }

  private static CheckResult worst(List<CheckResult> checks) {
    return checks.stream().max(Comparator.comparingDouble(CaseResult::used)).orElseThrow();
  }

  /** Part of the allowed difference that is used; infinite where nothing was found. */
  private static double used(CheckResult check) {
    double used = Math.abs(check.found() - check.expected()) / check.allowed();
    return Double.isNaN(used) ? Double.POSITIVE_INFINITY : used;
  }

  /** Whether it converged, checked something, and everything checked is met. */
  public boolean passed() {
    return converged && !rows.isEmpty() && rows.stream().allMatch(Row::met);
  }
}
