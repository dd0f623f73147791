package auricle.modelfile;

import auricle.analysis.Selector;
import auricle.analysis.Support;
import auricle.analysis.Triple;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import java.util.List;

/** Supports of a model file. */
final class SupportEntries {
  private final Findings findings;

  /**
   * @param findings gets what the schema cannot say
   */
  SupportEntries(Findings findings) {
    this.findings = findings;
  }

  Support support(Entry item) {
    Entry e = item.only();
    String at = e.at();
    Selector where = SelectorEntries.where(e);
    return switch (item.onlyKey()) {
      case "clamp" -> new Support.Clamp(at, where);
      case "fix" -> fix(e, where);
      case "symmetry" -> new Support.Symmetry(at, where, Triples.direction(e.get("normal")));
      case "move" ->
          new Support.Move(
              at,
              where,
              new Triple(
                  e.number("x_mm", Double.NaN),
                  e.number("y_mm", Double.NaN),
                  e.number("z_mm", Double.NaN)));
      case "turn" ->
          new Support.Turn(at, where, Triples.direction(e.get("axis")), e.number("angle_deg"));
      default -> throw new IllegalStateException("no reader for " + at);
    };
  }

  private Support fix(Entry e, Selector where) {
    boolean rotation = e.flag("rotation");
    if (!e.has("directions") && !rotation) {
      findings.error(
          e.at(),
          "neither directions nor rotation: it holds nothing",
          "directions: [x, y, z] or some of them, or rotation: true",
          "");
    }
    return new Support.Fix(e.at(), where, directions(e), rotation);
  }

  private static List<Triple> directions(Entry e) {
    return e.items("directions").stream().map(Triples::direction).toList();
  }
}
