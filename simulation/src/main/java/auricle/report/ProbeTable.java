package auricle.report;

import auricle.analysis.AnalysisResult;
import auricle.analysis.Probe;
import auricle.analysis.StepResult;
import java.util.List;

/** The probes of every load step as CSV (RFC 4180), a column a probe with its unit in the name. */
public final class ProbeTable {
  private ProbeTable() {}

  /** The file; numbers in full precision, an empty cell where there is none. */
  public static String write(List<Probe> probes, AnalysisResult result) {
    StringBuilder csv = new StringBuilder("step,load_factor,converged");
    probes.forEach(p -> csv.append(',').append(column(p)));
    csv.append("\r\n");
    for (StepResult step : result.steps()) {
      csv.append(step.number()).append(',').append(step.loadFactor());
      csv.append(',').append(step.converged());
      step.probes().forEach(v -> csv.append(',').append(v.isNaN() ? "" : v.toString()));
      csv.append("\r\n");
    }
    return csv.toString();
  }

  /** Name of a probe's column. */
  public static String column(Probe probe) {
    return probe.name() + "_" + probe.unit();
  }
}
