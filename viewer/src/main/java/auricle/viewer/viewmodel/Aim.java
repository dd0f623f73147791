package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.plan.Target;
import java.util.EnumMap;
import java.util.Map;

/** One range of a target balance: its name, unit, place in files, and how it is changed. */
public enum Aim {
  /** Distance of the rim from the head at the upper level. */
  UPPER(Figure.HELIX_MASTOID_UPPER),
  /** The same at the middle level. */
  MIDDLE(Figure.HELIX_MASTOID_MIDDLE),
  /** The same at the lower level. */
  LOWER(Figure.HELIX_MASTOID_LOWER),
  /** Distance of the lobule from the head. */
  LOBULE(Figure.LOBULE_MASTOID),
  /** Angle of the fold at the upper level. */
  FOLD_UPPER(Figure.FOLD_ANGLE_UPPER),
  /** The same at the middle level. */
  FOLD_MIDDLE(Figure.FOLD_ANGLE_MIDDLE),
  /** Angle between ear and head. */
  EAR_TO_HEAD(Figure.AURICULOCEPHALIC_ANGLE),
  /** Helix beyond the antihelix from the front. */
  SHOW(Figure.HELICAL_SHOW_UPPER, "helical_show_mm");

  private final Figure figure;
  private final String key;

  Aim(Figure figure) {
    this(figure, figure.key());
  }

  Aim(Figure figure, String key) {
    this.figure = figure;
    this.key = key;
  }

  /** As shown. */
  public String label() {
    String label = figure.label();
    return Character.toUpperCase(label.charAt(0)) + label.substring(1);
  }

  /** mm or deg. */
  public String unit() {
    return figure.unit();
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
