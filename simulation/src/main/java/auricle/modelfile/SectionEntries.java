package auricle.modelfile;

import auricle.analysis.Ply;
import auricle.analysis.RestChange;
import auricle.analysis.SectionChoice;
import auricle.analysis.Selector;
import auricle.diagnostics.Findings;
import auricle.yamlfile.Entry;
import java.util.List;

/** Sections and rest shape changes of a model file. */
final class SectionEntries {
  private final Findings findings;

  SectionEntries(Findings findings) {
    this.findings = findings;
  }

  SectionChoice section(Entry e, Selector where) {
    List<Ply> plies =
        e.has("plies") ? e.items("plies").stream().map(this::ply).toList() : List.of(ply(e));
    if (e.has("plies") && (e.has("thickness_mm") || e.has("young_mpa") || e.has("poisson"))) {
      findings.error(
          e.at(),
          "plies beside thickness_mm, young_mpa or poisson",
          "one of the two",
          "A laminate's plies say all of it.");
    }
    return new SectionChoice(
        e.at(), where, plies, e.number("offset_mm", 0), SelectorEntries.axis(e, "material_axis"));
  }

  private Ply ply(Entry e) {
    double free = e.number("free_strain", 0);
    double across = e.number("free_strain_across", free);
    double angle = e.number("angle_deg", 0);
    double thickness = need(e, "thickness_mm");
    if (e.has("e1_mpa")) {
      double e1 = e.number("e1_mpa");
      double e2 = need(e, "e2_mpa");
      double nu = need(e, "nu12");
      if (nu * nu >= e1 / e2) {
        findings.error(e.at() + "/nu12", "nu12 = " + nu, "nu12² less than e1_mpa / e2_mpa", "");
      }
      return new Ply(thickness, e1, e2, nu, need(e, "g12_mpa"), angle, free, across);
    }
    double young = need(e, "young_mpa");
    double poisson = need(e, "poisson");
    return new Ply(
        thickness, young, young, poisson, young / (2 * (1 + poisson)), angle, free, across);
  }

  private double need(Entry e, String key) {
    if (!e.has(key)) {
      String kind =
          e.has("e1_mpa")
              ? "an orthotropic layer has e1_mpa, e2_mpa, nu12, g12_mpa"
              : "an isotropic sheet has thickness_mm, young_mpa, poisson; else plies or e1_mpa …";
      findings.error(e.at(), "'" + key + "' is missing", kind, "");
      return 1;
    }
    return e.number(key);
  }

  static RestChange restChange(Entry e) {
    double both = e.number("stretch", 1);
    double curvature = e.number("curvature_per_mm", 0);
    return new RestChange(
        e.at(),
        SelectorEntries.where(e),
        SelectorEntries.axis(e, "axis"),
        e.number("stretch_along", both),
        e.number("stretch_across", both),
        e.number("shear", 0),
        e.number("curvature_along_per_mm", curvature),
        e.number("curvature_across_per_mm", curvature),
        e.number("twist_per_mm", 0));
  }
}
