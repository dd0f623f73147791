package auricle.fitting;

import auricle.anatomy.EarMeasurements;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The values that a shape should have.
 *
 * @param values by figure, in its unit
 */
record Wanted(Map<Figure, Double> values) {
  Wanted {
    values = Collections.unmodifiableMap(new EnumMap<>(values));
  }

  /** What was measured on an ear and depends on its shape. */
  static Wanted of(EarMeasurements ear) {
    Map<Figure, Double> values = new EnumMap<>(Figure.class);
    values.put(Figure.HELIX_MASTOID_UPPER, ear.helixMastoidUpper_mm());
    values.put(Figure.HELIX_MASTOID_MIDDLE, ear.helixMastoidMiddle_mm());
    values.put(Figure.HELIX_MASTOID_LOWER, ear.helixMastoidLower_mm());
    values.put(Figure.LOBULE_MASTOID, ear.lobuleMastoid_mm());
    values.put(Figure.FOLD_ANGLE_UPPER, ear.foldAngleUpper_deg());
    values.put(Figure.FOLD_ANGLE_MIDDLE, ear.foldAngleMiddle_deg());
    values.put(Figure.AURICULOCEPHALIC_ANGLE, ear.auriculocephalicAngle_deg());
    values.put(Figure.BOWL_DEPTH, ear.bowlDepth_mm());
    values.put(Figure.HEIGHT, ear.height_mm());
    values.put(Figure.WIDTH, ear.width_mm());
    return new Wanted(values);
  }

  /** The same, lessened by how much more one reading has than another. */
  Wanted less(Measures reading, Measures other) {
    Map<Figure, Double> values = new EnumMap<>(this.values);
    values.replaceAll((figure, value) -> value - figure.of(reading) + figure.of(other));
    return new Wanted(values);
  }

  /** How well measurements meet them. */
  List<FitResidual> residuals(Measures measures) {
    return values.entrySet().stream()
        .map(e -> new FitResidual(e.getKey(), e.getValue(), e.getKey().of(measures)))
        .toList();
  }
}
