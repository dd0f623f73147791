package auricle.modelfile;

import auricle.analysis.SolvePlan;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.stream.IntStream;

/** The way of solving of a model file. */
final class SolveEntries {
  private final Tables tables;
  private final Findings findings;

  SolveEntries(Tables tables, Findings findings) {
    this.tables = tables;
    this.findings = findings;
  }

  SolvePlan plan(Entry solve) {
    Entry e = solve.only();
    return switch (solve.onlyKey()) {
      case "linear" -> new SolvePlan.Linear(e.at());
      case "load_steps" ->
          new SolvePlan.LoadSteps(e.at(), factors(e), e.flag("accept_unstable"), limits(e));
      case "displacement_steps" ->
          new SolvePlan.DisplacementSteps(e.at(), places(e), arc(e), limits(e));
      case "path" -> path(e);
      default -> throw new IllegalStateException("no reader for " + e.at());
    };
  }

  private SolvePlan path(Entry e) {
    if (e.has("last_factor") && e.has("until")) {
      findings.error(e.at(), "last_factor beside until", "one end", "");
    }
    return new SolvePlan.Path(
        e.at(),
        e.number("last_factor", Double.NaN),
        e.find("until").map(u -> control(u, u.number("value_mm"))),
        e.integer("most_steps", 1000),
        arc(e),
        limits(e));
  }

  private List<SolvePlan.Control> places(Entry e) {
    return listed(e, "values_mm").stream().map(value -> control(e, value)).toList();
  }

  private static SolvePlan.Control control(Entry e, double value_mm) {
    return new SolvePlan.Control(
        e.at(), SelectorEntries.where(e), Triples.direction(e.get("direction")), value_mm);
  }

  private static SolvePlan.Arc arc(Entry e) {
    return new SolvePlan.Arc(
        e.number("first_step_mm", Double.NaN), e.number("largest_step_mm", Double.NaN));
  }

  private List<Double> factors(Entry e) {
    if (!e.has("count")) {
      return listed(e, "factors");
    }
    if (e.has("factors") || e.has("from_table")) {
      findings.error(e.at(), "count beside factors or from_table", "one of them", "");
    }
    int count = e.integer("count", 1);
    double last = e.number("last_factor", 1);
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> i == count ? last : last * i / count)
        .toList();
  }

  /** Numbers written out or taken from a column of a table. */
  private List<Double> listed(Entry e, String key) {
    if (e.has(key) == e.has("from_table")) {
      findings.error(
          e.at(),
          e.has(key) ? key + " beside from_table" : "neither " + key + " nor from_table",
          "one of them",
          "");
    }
    return e.has(key) ? e.numbers(key) : e.find("from_table").map(tables::column).orElse(List.of());
  }

  private static SolvePlan.Limits limits(Entry e) {
    return new SolvePlan.Limits(e.number("tolerance", 1e-8), e.integer("most_iterations", 200));
  }
}
