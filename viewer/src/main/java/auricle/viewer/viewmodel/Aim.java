package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.plan.Range;
import auricle.plan.Target;
import java.util.EnumMap;
import java.util.Map;

/** One range of a target balance: its name, unit, place in files, and how it is changed. */
public enum Aim {
  /** Distance of the rim from the head at the upper level. */
  UPPER("Helix to mastoid, upper", "mm", Target.key(Level.UPPER)),
  /** The same at the middle level. */
  MIDDLE("Helix to mastoid, middle", "mm", Target.key(Level.MIDDLE)),
  /** The same at the lower level. */
  LOWER("Helix to mastoid, lower", "mm", Target.key(Level.LOWER)),
  /** Distance of the lobule from the head. */
  LOBULE("Lobule to mastoid", "mm", Target.key(Level.LOBULE)),
  /** Angle of the fold at the upper level. */
  FOLD_UPPER("Scapha-conchal angle, upper", "deg", "fold_angle_upper_deg"),
  /** The same at the middle level. */
  FOLD_MIDDLE("Scapha-conchal angle, middle", "deg", "fold_angle_middle_deg"),
  /** Angle between ear and head. */
  EAR_TO_HEAD("Auriculocephalic angle", "deg", "auriculocephalic_angle_deg"),
  /** Helix beyond the antihelix from the front. */
  SHOW("Helix beyond antihelix, upper", "mm", "helical_show_mm");

  private final String label;
  private final String unit;
  private final String key;

  Aim(String label, String unit, String key) {
    this.label = label;
    this.unit = unit;
    this.key = key;
  }

  /** As shown. */
  public String label() {
    return label;
  }

  /** mm or deg. */
  public String unit() {
    return unit;
  }

  /** Name in files. */
  public String key() {
    return key;
  }

  /** The range in a target. */
  public Range of(Target t) {
    return switch (this) {
      case UPPER, MIDDLE, LOWER, LOBULE ->
          t.helixMastoid_mm().getOrDefault(Level.valueOf(name()), Range.of(0, 60));
      case FOLD_UPPER -> t.foldAngleUpper_deg();
      case FOLD_MIDDLE -> t.foldAngleMiddle_deg();
      case EAR_TO_HEAD -> t.auriculocephalicAngle_deg();
      case SHOW -> t.helicalShow_mm();
    };
  }

  /** A target with another range. */
  public Target with(Target t, Range range) {
    Map<Level, Range> levels = new EnumMap<>(Level.class);
    levels.putAll(t.helixMastoid_mm());
    if (ordinal() <= LOBULE.ordinal()) {
      levels.put(Level.valueOf(name()), range);
    }
    return new Target(
        levels,
        this == FOLD_UPPER ? range : t.foldAngleUpper_deg(),
        this == FOLD_MIDDLE ? range : t.foldAngleMiddle_deg(),
        this == EAR_TO_HEAD ? range : t.auriculocephalicAngle_deg(),
        this == SHOW ? range : t.helicalShow_mm(),
        t.sideDifference_mm());
  }
}
