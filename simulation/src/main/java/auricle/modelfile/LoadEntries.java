package auricle.modelfile;

import auricle.analysis.Load;
import auricle.analysis.Selector;
import auricle.analysis.Triple;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;

/** Loads of a model file. */
final class LoadEntries {
  private final ModelFolder folder;
  private final Findings findings;

  /**
   * @param folder where mesh files are looked for
   * @param findings gets what the schema cannot say
   */
  LoadEntries(ModelFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  Load load(Entry item) {
    Entry e = item.only();
    return item.onlyKey().equals("thread")
        ? thread(e)
        : load(item.onlyKey(), e, SelectorEntries.where(e));
  }

  private Load load(String kind, Entry e, Selector where) {
    String at = e.at();
    boolean constant = e.flag("constant");
    return switch (kind) {
      case "point_force" -> point(e, where, constant);
      case "line_force" ->
          new Load.Line(at, where, Triples.triple(e.get("force_n_per_mm")), constant);
      case "edge_moment" ->
          new Load.EdgeMoment(
              at, where, Triples.direction(e.get("axis")), e.number("moment_n"), constant);
      case "surface_force" ->
          new Load.Surface(at, where, Triples.triple(e.get("force_n_per_mm2")), constant);
      case "pressure" ->
          new Load.Pressure(
              at,
              where,
              e.number("pressure_mpa"),
              !e.has("follower") || e.flag("follower"),
              e.has("origin_mm") ? Triples.triple(e.get("origin_mm")) : new Triple(0, 0, 0),
              constant);
      case "plane_contact" ->
          new Load.PlaneContact(
              at,
              e.text("name"),
              where,
              Triples.triple(e.get("point_mm")),
              Triples.direction(e.get("normal")),
              e.number("gap_mm"),
              e.number("pressure_mpa"));
      case "surface_contact" ->
          new Load.SurfaceContact(
              at, e.text("name"), where, partner(e), e.number("gap_mm"), e.number("pressure_mpa"));
      case "foundation" ->
          new Load.Foundation(
              at, where, e.number("normal_mpa_per_mm"), e.number("tangential_mpa_per_mm", 0));
      default -> throw new IllegalStateException("no reader for " + at);
    };
  }

  private Load point(Entry e, Selector where, boolean constant) {
    boolean total = e.has("total_n");
    if (total == e.has("each_n")) {
      findings.error(
          e.at(),
          total ? "total_n beside each_n" : "neither total_n nor each_n",
          "one of them",
          "");
    }
    Triple force = Triples.triple(e.get(total ? "total_n" : "each_n"));
    return new Load.Point(e.at(), where, force, total, constant);
  }

  private Load.Partner partner(Entry e) {
    boolean fixed = e.has("fixed_surface");
    if (fixed == e.has("shell") || (e.has("shift_mm") && !fixed)) {
      findings.error(
          e.at(),
          fixed
              ? "shell beside fixed_surface"
              : e.has("shell")
                  ? "shift_mm without fixed_surface"
                  : "neither shell nor fixed_surface",
          "shell: a part of the shell, or fixed_surface: a mesh, which shift_mm may move",
          "");
    }
    if (!fixed) {
      Entry shell = e.get("shell");
      return new Load.Partner.Part(
          shell.at(),
          e.has("shell") ? SelectorEntries.selector(shell) : new Selector.Everything(e.at()));
    }
    Entry surface = e.get("fixed_surface");
    Triple shift = e.has("shift_mm") ? Triples.triple(e.get("shift_mm")) : new Triple(0, 0, 0);
    return new Load.Partner.Fixed(surface.at(), MeshEntries.source(surface, folder::path), shift);
  }

  private static Load thread(Entry e) {
    Entry tie = e.get("tie");
    Load.Tie kind =
        switch (tie.onlyKey()) {
          case "length_mm" -> Load.Tie.LENGTH;
          case "shorten_mm" -> Load.Tie.SHORTENING;
          default -> Load.Tie.TENSION;
        };
    return new Load.TiedThread(
        e.at(),
        e.text("name"),
        e.items("points").stream().map(LoadEntries::point).toList(),
        e.flag("closed"),
        e.number("stiffness_n"),
        kind,
        tie.number(tie.onlyKey()));
  }

  private static Load.ThreadPoint point(Entry e) {
    if (e.has("anchor_mm")) {
      return new Load.ThreadPoint(e.at(), Triples.triple(e.only()), true, 0);
    }
    Entry shell = e.only();
    return new Load.ThreadPoint(
        e.at(), Triples.triple(shell.get("place_mm")), false, shell.number("offset_mm", 0));
  }
}
