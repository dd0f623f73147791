package auricle.plan;

import auricle.anatomy.EarMeasurements;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What is measured on an ear before the plan, by key, with bounds beyond which no ear was seen by
 * us in any text; the bounds are our own choice and catch slips, not rare ears.
 */
public enum EarMeasure {
  /** Age. */
  AGE(
      "age_years",
      "age",
      "years",
      0.5,
      110,
      1,
      EarMeasurements::age_years,
      EarMeasurements::withAge_years),
  /** Height of the ear. */
  HEIGHT(
      "height_mm",
      "ear height",
      "mm",
      30,
      90,
      0.5,
      EarMeasurements::height_mm,
      EarMeasurements::withHeight_mm),
  /** Width of the ear. */
  WIDTH(
      "width_mm",
      "ear width",
      "mm",
      15,
      55,
      0.5,
      EarMeasurements::width_mm,
      EarMeasurements::withWidth_mm),
  /** Helix-to-mastoid distance at the upper level. */
  HELIX_MASTOID_UPPER(
      "helix_mastoid_upper_mm",
      "helix to mastoid, upper",
      "mm",
      4,
      45,
      0.5,
      EarMeasurements::helixMastoidUpper_mm,
      EarMeasurements::withHelixMastoidUpper_mm),
  /** Helix-to-mastoid distance at the middle level. */
  HELIX_MASTOID_MIDDLE(
      "helix_mastoid_middle_mm",
      "helix to mastoid, middle",
      "mm",
      4,
      45,
      0.5,
      EarMeasurements::helixMastoidMiddle_mm,
      EarMeasurements::withHelixMastoidMiddle_mm),
  /** Helix-to-mastoid distance at the lower level. */
  HELIX_MASTOID_LOWER(
      "helix_mastoid_lower_mm",
      "helix to mastoid, lower",
      "mm",
      4,
      45,
      0.5,
      EarMeasurements::helixMastoidLower_mm,
      EarMeasurements::withHelixMastoidLower_mm),
  /** Lobule-to-mastoid distance. */
  LOBULE_MASTOID(
      "lobule_mastoid_mm",
      "lobule to mastoid",
      "mm",
      2,
      45,
      0.5,
      EarMeasurements::lobuleMastoid_mm,
      EarMeasurements::withLobuleMastoid_mm),
  /** Auriculocephalic angle at the middle level. */
  AURICULOCEPHALIC_ANGLE(
      "auriculocephalic_angle_deg",
      "auriculocephalic angle",
      "deg",
      5,
      90,
      1,
      EarMeasurements::auriculocephalicAngle_deg,
      EarMeasurements::withAuriculocephalicAngle_deg),
  /** Scapha-conchal angle at the upper level. */
  FOLD_ANGLE_UPPER(
      "fold_angle_upper_deg",
      "scapha-conchal angle, upper",
      "deg",
      60,
      179,
      1,
      EarMeasurements::foldAngleUpper_deg,
      EarMeasurements::withFoldAngleUpper_deg),
  /** Scapha-conchal angle at the middle level. */
  FOLD_ANGLE_MIDDLE(
      "fold_angle_middle_deg",
      "scapha-conchal angle, middle",
      "deg",
      60,
      179,
      1,
      EarMeasurements::foldAngleMiddle_deg,
      EarMeasurements::withFoldAngleMiddle_deg),
  /** Depth of the conchal bowl. */
  BOWL_DEPTH(
      "bowl_depth_mm",
      "depth of the conchal bowl",
      "mm",
      2,
      30,
      0.5,
      EarMeasurements::bowlDepth_mm,
      EarMeasurements::withBowlDepth_mm),
  /** Thickness of the conchal cartilage. */
  CARTILAGE_THICKNESS(
      "cartilage_thickness_mm",
      "thickness of the cartilage",
      "mm",
      0.4,
      3.5,
      0.05,
      EarMeasurements::cartilageThickness_mm,
      EarMeasurements::withCartilageThickness_mm);

  private static final String REASON = "no ear measures less or more; look for a slip";

  private final String key;
  private final String label;
  private final String unit;
  private final double low;
  private final double high;
  private final double step;
  private final transient ToDoubleFunction<EarMeasurements> reading;
  private final transient Change change;

  EarMeasure(
      String key,
      String label,
      String unit,
      double low,
      double high,
      double step,
      ToDoubleFunction<EarMeasurements> reading,
      Change change) {
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.low = low;
    this.high = high;
    this.step = step;
    this.reading = reading;
    this.change = change;
  }

  /** Gives an ear another value. */
  private interface Change {
    EarMeasurements of(EarMeasurements ear, double value);
  }

  /** Name in files, with the unit. */
  public String key() {
    return key;
  }

  /** What the trade calls it, with its value, bounds and unit. */
  public Dose of(EarMeasurements ear) {
    return new Dose(key, label, unit, value(ear), low, high, step, REASON);
  }

  /** Its value, in its unit. */
  public double value(EarMeasurements ear) {
    return reading.applyAsDouble(ear);
  }

  /** The ear with another value of it. */
  public EarMeasurements with(EarMeasurements ear, double value) {
    return change.of(ear, value);
  }

  /** The one of a key, if there is one. */
  public static Optional<EarMeasure> ofKey(String key) {
    return Arrays.stream(values()).filter(m -> m.key.equals(key)).findFirst();
  }
}
