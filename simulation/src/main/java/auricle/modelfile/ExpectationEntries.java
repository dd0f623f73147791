package auricle.modelfile;

import auricle.analysis.Expectation;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import java.util.ArrayList;
import java.util.List;

/** Expected values of a model file. */
final class ExpectationEntries {
  private final Tables tables;
  private final Findings findings;

  ExpectationEntries(Tables tables, Findings findings) {
    this.tables = tables;
    this.findings = findings;
  }

  Expectation expectation(Entry e) {
    if (e.has("value") == e.has("table")) {
      findings.error(
          e.at(), e.has("value") ? "value beside table" : "no value", "value or table", "");
    }
    Entry table = e.get("table");
    Entry tolerance = e.get("tolerance");
    return new Expectation(
        e.at(),
        e.text("probe"),
        e.has("table") ? points(table) : List.of(point(e)),
        table.text("over_probe"),
        tolerance.number("relative", 0),
        tolerance.number("of_largest", 0),
        tolerance.number("absolute", 0),
        e.text("source"),
        e.text("confidence"));
  }

  private static Expectation.Point point(Entry e) {
    return new Expectation.Point(e.number("at_load_factor", Double.NaN), e.number("value"));
  }

  private List<Expectation.Point> points(Entry table) {
    List<Double> over = tables.column(table, "over_column", "over_factor");
    List<Double> values = tables.column(table, "value_column", "value_factor");
    List<Expectation.Point> points = new ArrayList<>();
    for (int i = 0; i < Math.min(over.size(), values.size()); i++) {
      boolean rest = over.get(i) == 0 && values.get(i) == 0;
      if (!rest) { // a table may begin with the state at rest, which checks nothing
        points.add(new Expectation.Point(over.get(i), values.get(i)));
      }
    }
    return points;
  }
}
