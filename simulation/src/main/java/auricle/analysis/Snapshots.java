package auricle.analysis;

import java.util.ArrayList;
import java.util.List;

/** Draws a state of a shell into fields at vertices and triangles. */
final class Snapshots {
  private final ShellProblem problem;

  Snapshots(ShellProblem problem) {
    this.problem = problem;
  }

  private interface PerPlace {
    void fill(int place, double[] out, int at);
  }

  ShellSnapshot of(ShellView view) {
    return new ShellSnapshot(
        problem.mesh().positions(), problem.topology().triangles(), points(view), cells(view));
  }

  private List<FieldData> points(ShellView view) {
    List<FieldData> points = new ArrayList<>();
    points.add(vectors("displacement_mm", view::displacement));
    points.add(vectors("director_change", view::directorChange));
    if (!problem.contacts().isEmpty()) {
      double[] forces = new double[view.unknowns().length];
      problem.contacts().forEach(c -> c.addForces(view.unknowns(), forces));
      points.add(vectors("contact_force_n", (v, c) -> forces[3 * v + c]));
    }
    return points;
  }

  private interface AtVertex {
    double value(int vertex, int c);
  }

  private FieldData vectors(String name, AtVertex at) {
    return field(
        name,
        3,
        problem.mesh().vertexCount(),
        (v, out, from) -> {
          for (int c = 0; c < 3; c++) {
            out[from + c] = at.value(v, c);
          }
        });
  }

  private List<FieldData> cells(ShellView view) {
    int n = problem.topology().triangleCount();
    SectionPlan sections = problem.sections();
    MaterialDirections directions = new MaterialDirections(problem.mesh());
    return List.of(
        field(
            "axis_1",
            3,
            n,
            (t, out, at) ->
                System.arraycopy(directions.vector(t, sections.angle(t)), 0, out, at, 3)),
        tensor("strain_top_11_22_12", view, n, Probe.Quantity.STRAIN, Probe.Face.TOP),
        tensor("strain_middle_11_22_12", view, n, Probe.Quantity.STRAIN, Probe.Face.MIDDLE),
        tensor("strain_bottom_11_22_12", view, n, Probe.Quantity.STRAIN, Probe.Face.BOTTOM),
        tensor("stress_top_mpa_11_22_12", view, n, Probe.Quantity.STRESS, Probe.Face.TOP),
        tensor("stress_bottom_mpa_11_22_12", view, n, Probe.Quantity.STRESS, Probe.Face.BOTTOM),
        tensor("section_force_n_per_mm_11_22_12", view, n, Probe.Quantity.FORCE, Probe.Face.MIDDLE),
        tensor("section_moment_n_11_22_12", view, n, Probe.Quantity.MOMENT, Probe.Face.MIDDLE),
        tensor("curvature_per_mm_11_22_12", view, n, Probe.Quantity.CURVATURE, Probe.Face.MIDDLE),
        misesAt("von_mises_top_mpa", view, n, Probe.Face.TOP),
        misesAt("von_mises_bottom_mpa", view, n, Probe.Face.BOTTOM),
        field("thickness_mm", 1, n, (t, out, at) -> out[at] = sections.section(t).thickness()),
        field("section_number", 1, n, (t, out, at) -> out[at] = sections.number(t)));
  }

  private FieldData tensor(
      String name, ShellView view, int n, Probe.Quantity quantity, Probe.Face face) {
    return field(
        name,
        3,
        n,
        (t, out, at) -> {
          Plane tensor = at(view, t, quantity, face);
          out[at] = tensor.xx();
          out[at + 1] = tensor.yy();
          out[at + 2] = tensor.xy();
        });
  }

  private FieldData misesAt(String name, ShellView view, int n, Probe.Face face) {
    return field(
        name,
        1,
        n,
        (t, out, at) ->
            out[at] =
                at(view, t, Probe.Quantity.STRESS, face).component(Probe.Component.VON_MISES));
  }

  private Plane at(ShellView view, int t, Probe.Quantity quantity, Probe.Face face) {
    return problem.fields().tensor(quantity, face, t, view);
  }

  private static FieldData field(String name, int components, int places, PerPlace value) {
    double[] values = new double[components * places];
    for (int i = 0; i < places; i++) {
      value.fill(i, values, components * i);
    }
    return new FieldData(name, components, values);
  }
}
