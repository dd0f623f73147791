package auricle.analysis;

import auricle.diagnostics.Findings;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import java.util.List;
import java.util.Optional;

/** The shape in which nothing is strained: that of the mesh at first, changed in full at λ = 1. */
final class RestPlan {
  private final RestShape start;
  private final RestShape grown;

  /**
   * @param other mesh of the same triangles that is free of strain in the end, if there is one
   */
  RestPlan(
      ShellMesh mesh,
      Optional<ShellMesh> other,
      List<RestChange> changes,
      SectionPlan sections,
      MeshSets sets,
      Findings findings) {
    start = RestShape.of(mesh.topology(), mesh.unknowns(), mesh.directors());
    RestShape end = other.map(o -> shapeOf(o, mesh)).orElseGet(start::copy);
    boolean changed = sections.addFreeStrain(end) || other.isPresent() || !changes.isEmpty();
    MaterialDirections directions = new MaterialDirections(mesh);
    for (RestChange change : changes) {
      for (int t : sets.findTriangles(change.where()).triangles()) {
        apply(change, t, directions, end, findings);
      }
    }
    grown = changed ? end : start;
    check(start, "/mesh", "the shape of the mesh", findings);
    check(end, "/rest_changes", "the shape in which nothing is strained", findings);
  }

  /** Needles and triangles that cannot close are told before anything is built on them. */
  private static void check(RestShape shape, String at, String what, Findings findings) {
    for (int t = 0; t < shape.topology().triangleCount(); t++) {
      if (!shape.closes(t)) {
        findings.error(
            at, "triangle " + t + " does not close in " + what, "triangles of some area", "");
        return;
      }
    }
  }

  private static RestShape shapeOf(ShellMesh other, ShellMesh mesh) {
    return RestShape.of(other.topology(), other.unknowns(), other.directors()).on(mesh.topology());
  }

  private static void apply(
      RestChange c, int t, MaterialDirections directions, RestShape rest, Findings findings) {
    boolean directed =
        c.stretch1() != c.stretch2()
            || c.curvature1_per_mm() != c.curvature2_per_mm()
            || c.shear() != 0
            || c.twist_per_mm() != 0;
    double angle = c.axis().map(a -> directions.angle(t, a)).orElse(directed ? Double.NaN : 0);
    if (Double.isNaN(angle)) {
      if (findings.list().stream().noneMatch(f -> f.where().equals(c.at()))) {
        findings.error(
            c.at(),
            c.axis().isEmpty() ? "no axis" : "the axis stands normal to triangle " + t,
            "an axis along which the shape changes",
            "");
      }
      return;
    }
    Plane strain = new Plane(green(c.stretch1()), green(c.stretch2()), c.shear()).turned(-angle);
    Plane bend =
        new Plane(c.curvature1_per_mm(), c.curvature2_per_mm(), c.twist_per_mm()).turned(-angle);
    rest.addStrain(t, strain.xx(), strain.yy(), strain.xy());
    rest.addCurvature(t, bend.xx(), bend.yy(), bend.xy());
  }

  /** The strain that makes lengths so many times longer: a + 2 ε = s² a. */
  private static double green(double stretch) {
    return (stretch * stretch - 1) / 2;
  }

  /** At load factor 0. */
  RestShape start() {
    return start;
  }

  /** At load factor 1; the same object if nothing changes. */
  RestShape grown() {
    return grown;
  }
}
