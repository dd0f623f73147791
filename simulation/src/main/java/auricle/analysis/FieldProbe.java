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
    Plane tensor =
        tensor(
            probe.quantity(),
            probe.face(),
            triangle,
            view.fields().at(triangle),
            view.loadFactor());
    double turn =
        probe.axis().map(a -> directions.angle(triangle, a) - sections.angle(triangle)).orElse(0.0);
    return tensor.turned(turn).component(probe.component());
  }

  /** A field of a triangle in the axes of its section. */
  Plane tensor(
      Probe.Quantity quantity, Probe.Face face, int triangle, double[] strain, double loadFactor) {
    Laminate laminate = sections.laminate(triangle);
    double z = laminate.height(face);
    return switch (quantity) {
      case STRAIN ->
          new Plane(
              strain[0] + z * strain[3],
              strain[1] + z * strain[4],
              (strain[2] + z * strain[5]) / 2);
      case STRESS -> {
        double[] stress = laminate.stress(face, strain, loadFactor);
        yield new Plane(stress[0], stress[1], stress[2]);
      }
      case FORCE -> resultant(laminate.section(), strain, 0);
      case MOMENT -> resultant(laminate.section(), strain, 3);
      case CURVATURE -> new Plane(strain[3], strain[4], strain[5] / 2);
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
