package auricle.report;

import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.report.picture.LevelFigures;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which figures a table shows, and what is aimed at. */
final class Targets {
  /** The figures that a reader needs at a glance, in order. */
  static final List<Figure> SHOWN =
      List.of(
          Figure.HELIX_MASTOID_UPPER,
          Figure.HELIX_MASTOID_MIDDLE,
          Figure.HELIX_MASTOID_LOWER,
          Figure.LOBULE_MASTOID,
          Figure.FOLD_ANGLE_UPPER,
          Figure.FOLD_ANGLE_MIDDLE,
          Figure.AURICULOCEPHALIC_ANGLE,
          Figure.HELICAL_SHOW_UPPER,
          Figure.HIDDEN_HELIX_LENGTH,
          Figure.BOWL_DEPTH);

  private Targets() {}

  /** The ranges aimed at, by figure. */
  static Map<Figure, Range> of(Target target) {
    Map<Figure, Range> ranges = new EnumMap<>(Figure.class);
    target.helixMastoid_mm().forEach((level, r) -> ranges.put(LevelFigures.distance(level), r));
    ranges.put(Figure.FOLD_ANGLE_UPPER, target.foldAngleUpper_deg());
    ranges.put(Figure.FOLD_ANGLE_MIDDLE, target.foldAngleMiddle_deg());
    ranges.put(Figure.AURICULOCEPHALIC_ANGLE, target.auriculocephalicAngle_deg());
    ranges.put(Figure.HELICAL_SHOW_UPPER, target.helicalShow_mm());
    return ranges;
  }
}
