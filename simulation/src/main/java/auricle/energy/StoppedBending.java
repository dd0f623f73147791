package auricle.energy;

import auricle.material.BendingStop;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.PlateShape;
import java.util.List;

/**
 * The {@link BendingStop stops} of one triangle, on its mean curvature: κ = r·(z − z̄) with one row
 * r made once, so that they add W(κ) A to the energy, W′ A r to the generalised forces and W″ A r
 * rᵀ to the quadratic form.
 */
final class StoppedBending {
  private static final StoppedBending NONE = new StoppedBending(List.of(), new double[6], 0);

  private final List<BendingStop> stops;
  private final double[] row;
  private final double area;

  private StoppedBending(List<BendingStop> stops, double[] row, double area) {
    this.stops = stops;
    this.row = row;
    this.area = area;
  }

  static StoppedBending of(PlateShape plate, int triangle, SectionField sections) {
    List<BendingStop> stops = sections.stops(triangle);
    if (stops.isEmpty()) {
      return NONE;
    }
    double angle = sections.angle(triangle);
    double[] c = StrainAxes.turned(TiltCurvature.mean(plate), Math.cos(angle), Math.sin(angle));
    Section section = sections.section(triangle);
    double coupled = section.stiffness(3, 4) / section.stiffness(4, 4);
    double[] row = new double[6];
    for (int k = 0; k < 6; k++) {
      row[k] = c[6 + k] + coupled * c[k];
    }
    return new StoppedBending(stops, row, plate.area());
  }

  /** Adds to the generalised forces of a measured triangle; their energy, mJ. */
  double add(TiltCurvature tilts, double[] rest, int restAt) {
    if (stops.isEmpty()) {
      return 0;
    }
    double curvature = tilts.along(row, rest, restAt);
    double energy = 0;
    double moment = 0;
    for (BendingStop stop : stops) {
      energy += stop.energy(curvature);
      moment += stop.moment(curvature);
    }
    tilts.addForce(area * moment, row);
    return area * energy;
  }

  /** The quadratic form of a measured triangle at this place: a new one where a stop acts. */
  double[] form(TiltCurvature tilts, double[] form, int at, double[] rest, int restAt) {
    if (stops.isEmpty()) {
      return form;
    }
    double curvature = tilts.along(row, rest, restAt);
    double stiffness = stops.stream().mapToDouble(stop -> stop.stiffness(curvature)).sum();
    double[] changed = new double[36];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        changed[6 * i + j] = form[at + 6 * i + j] + area * stiffness * row[i] * row[j];
      }
    }
    return changed;
  }
}
