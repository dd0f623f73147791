package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import java.util.List;

/** The section of every triangle, and the direction its numbers are told in. */
final class SectionPlan implements SectionField {
  private final List<SectionChoice> choices;
  private final List<Laminate> laminates;
  private final int[] choice;
  private final double[] angle;

  SectionPlan(ShellMesh mesh, List<SectionChoice> choices, MeshSets sets, Findings findings) {
    int n = mesh.topology().triangleCount();
    this.choices = List.copyOf(choices);
    laminates = choices.stream().map(Laminate::new).toList();
    choice = new int[n];
    angle = new double[n];
    MaterialDirections directions = new MaterialDirections(mesh);
    for (int c = 0; c < choices.size(); c++) {
      for (int t : sets.findTriangles(choices.get(c).where()).triangles()) {
        choice[t] = c;
      }
    }
    for (int t = 0; t < n; t++) {
      angle[t] =
          choices
              .get(choice[t])
              .axis()
              .map(turned(directions, t))
              .orElseGet(supplied(directions, t));
    }
    for (int c = 0; c < choices.size(); c++) {
      check(choices.get(c), c, findings);
    }
  }

  private static java.util.function.Function<MaterialAxis, Double> turned(
      MaterialDirections directions, int t) {
    return axis -> directions.angle(t, axis);
  }

  private static java.util.function.Supplier<Double> supplied(
      MaterialDirections directions, int t) {
    return () -> directions.usual(t);
  }

  private void check(SectionChoice c, int number, Findings findings) {
    if (c.axis().isEmpty() && c.plies().stream().anyMatch(p -> !isotropic(p))) {
      findings.error(
          c.at(),
          "a layer with fibres, but no material axis",
          "material_axis",
          "Say where the fibres point: material_axis: {along: x}, or around an axis.");
    }
    for (int t = 0; t < choice.length; t++) {
      if (choice[t] == number && Double.isNaN(angle[t])) {
        findings.error(
            c.at() + "/material_axis",
            "the axis stands normal to triangle " + t,
            "an axis that can be laid into the surface everywhere",
            "");
        return;
      }
    }
  }

  private static boolean isotropic(Ply p) {
    double g = p.e1_mpa() / (2 * (1 + p.nu12()));
    return p.e1_mpa() == p.e2_mpa()
        && p.free1() == p.free2()
        && Math.abs(g - p.g12_mpa()) <= 1e-9 * g;
  }

  Laminate laminate(int triangle) {
    return laminates.get(choice[triangle]);
  }

  /** How far the middle of a triangle's section lies above the mesh, mm. */
  double offset(int triangle) {
    return choices.get(choice[triangle]).offset_mm();
  }

  /** Number of a triangle's section in the order of the model. */
  int number(int triangle) {
    return choice[triangle];
  }

  @Override
  public Section section(int triangle) {
    return laminate(triangle).section();
  }

  @Override
  public double angle(int triangle) {
    return angle[triangle];
  }

  /** Puts the free strain of the plies into a rest shape; whether there is any. */
  boolean addFreeStrain(RestShape rest) {
    boolean any = false;
    for (int t = 0; t < choice.length; t++) {
      Laminate l = laminate(t);
      if (l.strained()) {
        any = true;
        Plane strain = new Plane(l.free(0), l.free(1), l.free(2) / 2).turned(-angle[t]);
        Plane bend = new Plane(l.free(3), l.free(4), l.free(5) / 2).turned(-angle[t]);
        rest.addStrain(t, strain.xx(), strain.yy(), strain.xy());
        rest.addCurvature(t, bend.xx(), bend.yy(), bend.xy());
      }
    }
    return any;
  }

  /** Largest membrane stiffness, N/mm. */
  double stiffest() {
    return laminates.stream().mapToDouble(l -> l.section().stiffness(0, 0)).max().orElseThrow();
  }
}
