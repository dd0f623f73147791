package auricle.modelfile;

import auricle.analysis.Over;
import auricle.analysis.Probe;
import auricle.yamlfile.Entry;
import java.util.List;
import java.util.Locale;

/** Probes of a model file. */
final class ProbeEntries {
  private ProbeEntries() {}

  static List<Probe> probes(Entry probes) {
    return probes.keys().stream().map(name -> probe(name, probes.get(name))).toList();
  }

  private static Probe probe(String name, Entry item) {
    Entry e = item.only();
    String at = e.at();
    return switch (item.onlyKey()) {
      case "displacement" ->
          new Probe.Displacement(
              at,
              name,
              SelectorEntries.where(e),
              e.find("direction").map(Triples::direction),
              over(e));
      case "rotation" ->
          new Probe.Rotation(
              at, name, SelectorEntries.where(e), Triples.direction(e.get("axis")), over(e));
      case "reaction" ->
          new Probe.Reaction(
              at, name, SelectorEntries.where(e), Triples.direction(e.get("direction")));
      case "distance" ->
          new Probe.Distance(
              at,
              name,
              SelectorEntries.selector(e.get("from")),
              SelectorEntries.selector(e.get("to")));
      case "strain" -> field(name, e, Probe.Quantity.STRAIN);
      case "stress" -> field(name, e, Probe.Quantity.STRESS);
      case "section_force" -> field(name, e, Probe.Quantity.FORCE);
      case "section_moment" -> field(name, e, Probe.Quantity.MOMENT);
      case "curvature" -> field(name, e, Probe.Quantity.CURVATURE);
      case "energy" -> new Probe.Energy(at, name);
      case "tension" -> new Probe.Tension(at, name, e.text("thread"));
      case "contact_force" ->
          new Probe.ContactForce(
              at, name, e.text("contact"), e.find("direction").map(Triples::direction));
      case "contact_gap" -> new Probe.ContactGap(at, name, e.text("contact"));
      case "load_factor" -> new Probe.LoadFactor(at, name);
      default -> throw new IllegalStateException("no reader for " + at);
    };
  }

  private static Probe field(String name, Entry e, Probe.Quantity quantity) {
    return new Probe.Field(
        e.at(),
        name,
        SelectorEntries.where(e),
        quantity,
        Probe.Component.valueOf(upper(e.text("component"))),
        Probe.Face.valueOf(upper(e.text("face", "top"))),
        SelectorEntries.axis(e, "axis"),
        over(e));
  }

  private static Over over(Entry e) {
    return Over.valueOf(upper(e.text("over", "mean")));
  }

  private static String upper(String word) {
    return word.toUpperCase(Locale.ROOT);
  }
}
