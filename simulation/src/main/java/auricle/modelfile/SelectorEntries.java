package auricle.modelfile;

import auricle.analysis.MaterialAxis;
import auricle.analysis.NamedSelector;
import auricle.analysis.Selector;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.Optional;

/** Sets, selectors and material axes of a model file. */
final class SelectorEntries {
  private SelectorEntries() {}

  static List<NamedSelector> sets(Entry sets) {
    return sets.keys().stream().map(k -> new NamedSelector(k, selector(sets.get(k)))).toList();
  }

  /** The selector under the key {@code where}. */
  static Selector where(Entry entry) {
    return selector(entry.get("where"));
  }

  static Selector selector(Entry entry) {
    if (entry.node().isString()) {
      return named(entry);
    }
    String at = entry.at();
    Entry inner = entry.only();
    return switch (entry.onlyKey()) {
      case "everything" -> new Selector.Everything(at);
      case "named" -> named(inner);
      case "plane" ->
          new Selector.Plane(
              at,
              Triples.triple(inner.get("point_mm")),
              Triples.direction(inner.get("normal")),
              inner.number("tolerance_mm", Double.NaN));
      case "box" ->
          new Selector.Box(
              at, Triples.triple(inner.get("low_mm")), Triples.triple(inner.get("high_mm")));
      case "ball" ->
          new Selector.Ball(
              at,
              Triples.triple(inner.get("centre_mm")),
              inner.number("from_mm", 0),
              inner.number("to_mm"));
      case "tube" ->
          new Selector.Tube(
              at,
              Triples.triple(inner.get("point_mm")),
              Triples.direction(inner.get("axis")),
              inner.number("from_mm", 0),
              inner.number("to_mm"));
      case "nearest_mm" -> new Selector.Nearest(at, Triples.triple(inner));
      case "boundary" -> new Selector.Boundary(at);
      case "all_of" -> new Selector.AllOf(at, selectors(inner));
      case "any_of" -> new Selector.AnyOf(at, selectors(inner));
      case "without" ->
          new Selector.Without(at, selector(inner.get("base")), selectors(inner.get("removed")));
      default -> throw new IllegalStateException("no reader for " + at);
    };
  }

  private static List<Selector> selectors(Entry list) {
    return list.items().stream().map(SelectorEntries::selector).toList();
  }

  private static Selector named(Entry entry) {
    String name = entry.node().asString();
    return name.equals("all")
        ? new Selector.Everything(entry.at())
        : new Selector.Named(entry.at(), name);
  }

  static Optional<MaterialAxis> axis(Entry owner, String key) {
    return owner.find(key).map(SelectorEntries::axis);
  }

  private static MaterialAxis axis(Entry entry) {
    Entry inner = entry.only();
    return entry.onlyKey().equals("along")
        ? new MaterialAxis.Along(entry.at(), Triples.direction(inner))
        : new MaterialAxis.Around(
            entry.at(),
            Triples.triple(inner.get("point_mm")),
            Triples.direction(inner.get("axis")));
  }
}
