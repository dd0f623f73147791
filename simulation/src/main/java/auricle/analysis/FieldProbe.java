package auricle.analysis;

import auricle.material.Section;
import auricle.mesh.RestShape;

/** Works out strain, stress and section forces of triangles. */
final class FieldProbe {
  private final SectionPlan sections;
  private final MaterialDirections directions;
  private final RestShape rest;

  FieldProbe(SectionPlan sections, MaterialDirections directions, RestShape rest) {
    this.sections = sections;
    this.directions = directions;
    this.rest = rest;
  }

  /** One number of a triangle. */
  double value(Probe.Field probe, int triangle, ShellView view) {
    Plane tensor = tensor(probe.quantity(), probe.face(), triangle, view);
    double turn =
        probe.axis().map(a -> directions.angle(triangle, a) - sections.angle(triangle)).orElse(0.0);
    return tensor.turned(turn).component(probe.component());
  }

  /** A field of a triangle in the axes of its section. */
  Plane tensor(Probe.Quantity quantity, Probe.Face face, int triangle, ShellView view) {
    Laminate laminate = sections.laminate(triangle);
    double z = laminate.height(face);
    double[] total = view.total().at(triangle);
    double[] elastic = view.elastic().at(triangle);
    return switch (quantity) {
      case STRAIN ->
          new Plane(
              total[0] + z * total[3], total[1] + z * total[4], (total[2] + z * total[5]) / 2);
      case STRESS -> {
        double[] stress = laminate.stress(face, elastic, view.loadFactor());
        yield new Plane(stress[0], stress[1], stress[2]);
      }
      case FORCE -> resultant(laminate.section(), elastic, 0);
      case MOMENT -> resultant(laminate.section(), elastic, 3);
      case CURVATURE -> new Plane(total[3], total[4], total[5] / 2);
    };
  }

  private static Plane resultant(Section section, double[] strain, int row) {
    double[] three = new double[3];
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 6; b++) {
        three[a] += section.stiffness(row + a, b) * strain[b];
      }
    }
    return new Plane(three[0], three[1], three[2]);
  }

  /** Rest area of a triangle, mm². */
  double area(int triangle) {
    return rest.plate(triangle).area();
  }
}
