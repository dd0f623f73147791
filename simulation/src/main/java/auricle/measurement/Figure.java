package auricle.measurement;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The single figures among the measurements: key, name in the trade, unit, in table order. */
public enum Figure {
  /** Helix-to-mastoid distance at the upper level. */
  HELIX_MASTOID_UPPER(
      "helix_mastoid_upper_mm", "helix to mastoid, upper", "mm", Measures::helixMastoidUpper_mm),
  /** Helix-to-mastoid distance at the middle level. */
  HELIX_MASTOID_MIDDLE(
      "helix_mastoid_middle_mm", "helix to mastoid, middle", "mm", Measures::helixMastoidMiddle_mm),
  /** Helix-to-mastoid distance at the lower level. */
  HELIX_MASTOID_LOWER(
      "helix_mastoid_lower_mm", "helix to mastoid, lower", "mm", Measures::helixMastoidLower_mm),
  /** Lobule-to-mastoid distance. */
  LOBULE_MASTOID("lobule_mastoid_mm", "lobule to mastoid", "mm", Measures::lobuleMastoid_mm),
  /** Scapha-conchal angle at the upper level. */
  FOLD_ANGLE_UPPER(
      "fold_angle_upper_deg", "scapha-conchal angle, upper", "deg", Measures::foldAngleUpper_deg),
  /** Scapha-conchal angle at the middle level. */
  FOLD_ANGLE_MIDDLE(
      "fold_angle_middle_deg",
      "scapha-conchal angle, middle",
      "deg",
      Measures::foldAngleMiddle_deg),
  /** Auriculocephalic angle at mid-height. */
  AURICULOCEPHALIC_ANGLE(
      "auriculocephalic_angle_deg",
      "auriculocephalic angle",
      "deg",
      Measures::auriculocephalicAngle_deg),
  /** Depth of the conchal bowl. */
  BOWL_DEPTH("bowl_depth_mm", "depth of the conchal bowl", "mm", Measures::bowlDepth_mm),
  /** Helical show from the front at the upper level. */
  HELICAL_SHOW_UPPER(
      "helical_show_upper_mm",
      "helix beyond antihelix, upper",
      "mm",
      Measures::helicalShowUpper_mm),
  /** Helical show from the front at the middle level. */
  HELICAL_SHOW_MIDDLE(
      "helical_show_middle_mm",
      "helix beyond antihelix, middle",
      "mm",
      Measures::helicalShowMiddle_mm),
  /** Length of rim hidden from the front. */
  HIDDEN_HELIX_LENGTH(
      "hidden_helix_length_mm", "length of hidden helix", "mm", Measures::hiddenHelixLength_mm),
  /** Depth of the sulcus behind the ear. */
  SULCUS("sulcus_mm", "depth of the sulcus", "mm", Measures::sulcus_mm),
  /** Smallest radius of the rim. */
  RIM_SMALLEST_RADIUS(
      "rim_smallest_radius_mm", "sharpest bend of the rim", "mm", m -> m.rim().smallestRadius_mm()),
  /** Kinks of the rim. */
  RIM_KINKS("rim_kinks", "kinks of the rim", "", m -> m.rim().kinks()),
  /** Smallest radius of the crest of the fold. */
  FOLD_SMALLEST_RADIUS(
      "fold_smallest_radius_mm",
      "sharpest bend of the fold",
      "mm",
      m -> m.fold().smallestRadius_mm()),
  /** Kinks of the crest of the fold. */
  FOLD_KINKS("fold_kinks", "kinks of the fold", "", m -> m.fold().kinks()),
  /** Height of the ear. */
  HEIGHT("height_mm", "ear height", "mm", Measures::height_mm),
  /** Width of the ear. */
  WIDTH("width_mm", "ear width", "mm", Measures::width_mm);

  private final String key;
  private final String label;
  private final String unit;
  private final transient ToDoubleFunction<Measures> reading;

  Figure(String key, String label, String unit, ToDoubleFunction<Measures> reading) {
    this.key = key;
    this.label = label;
    this.unit = unit;
    this.reading = reading;
  }

  /** Name in files, with the unit. */
  public String key() {
    return key;
  }

  /** What the trade calls it. */
  public String label() {
    return label;
  }

  /** mm or deg; empty for a count. */
  public String unit() {
    return unit;
  }

  /** Its value among the measurements, in its unit. */
  public double of(Measures measures) {
    return reading.applyAsDouble(measures);
  }

  /** Value with key, label and unit. */
  public NamedValue named(Measures measures) {
    return new NamedValue(key, label, unit, of(measures));
  }

  /** The figure of a key, if there is one. */
  public static Optional<Figure> ofKey(String key) {
    return Arrays.stream(values()).filter(figure -> figure.key.equals(key)).findFirst();
  }
}
