package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import java.util.ArrayList;
import java.util.List;

/** Expected values against the steps of a run. */
final class Checks {
  private static final double SAME = 1e-6;

  private final List<Probe> probes;

  Checks(List<Probe> probes) {
    this.probes = probes;
  }

  /** Findings for expectations of probes that there are not. */
  void validate(List<Expectation> expectations, Findings findings) {
    for (Expectation e : expectations) {
      check(e.at() + "/probe", e.probe(), findings);
      if (!e.against().isEmpty()) {
        check(e.at() + "/table/over_probe", e.against(), findings);
      }
    }
  }

  /** A finding if there is no probe of a name. */
  void check(String at, String name, Findings findings) {
    if (place(name) < 0) {
      findings.error(
          at,
          "no probe '" + name + "'",
          "the name of a probe",
          NearestName.hint(name, probes.stream().map(Probe::name).toList()));
    }
  }

  /** Number of a probe in the order of the model, or -1. */
  int place(String name) {
    for (int i = 0; i < probes.size(); i++) {
      if (probes.get(i).name().equals(name)) {
        return i;
      }
    }
    return -1;
  }

  /** Every expected value with what was found. */
  List<CheckResult> results(List<Expectation> expectations, List<StepResult> steps) {
    List<StepResult> good = steps.stream().filter(StepResult::converged).toList();
    List<CheckResult> results = new ArrayList<>();
    for (Expectation e : expectations) {
      for (Expectation.Point p : e.points()) {
        results.add(
            new CheckResult(
                e.probe(),
                p.abscissa(),
                p.value(),
                found(e, p.abscissa(), steps, good),
                e.allowed(p.value()),
                e.source(),
                e.confidence()));
      }
    }
    return results;
  }

  /** The value at a step that has the abscissa, else between the two steps around it, else NaN. */
  private double found(
      Expectation e, double abscissa, List<StepResult> steps, List<StepResult> good) {
    int probe = place(e.probe());
    if (good.isEmpty() || (Double.isNaN(abscissa) && good.size() < steps.size())) {
      return Double.NaN;
    }
    if (Double.isNaN(abscissa)) {
      return good.get(good.size() - 1).probes().get(probe);
    }
    double largest = good.stream().mapToDouble(s -> Math.abs(over(e, s))).max().orElse(1);
    for (StepResult step : good) {
      if (Math.abs(over(e, step) - abscissa) <= SAME * largest) {
        return step.probes().get(probe);
      }
    }
    for (int i = 1; i < good.size(); i++) {
      double a = over(e, good.get(i - 1));
      double b = over(e, good.get(i));
      if ((a - abscissa) * (b - abscissa) < 0) {
        double share = (abscissa - a) / (b - a);
        double before = good.get(i - 1).probes().get(probe);
        return before + share * (good.get(i).probes().get(probe) - before);
      }
    }
    return Double.NaN;
  }

  private double over(Expectation e, StepResult step) {
    return e.against().isEmpty() ? step.loadFactor() : step.probes().get(place(e.against()));
  }
}
