package auricle.report;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.report.picture.LevelFigures;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which figures a table shows, what is aimed at, and how a figure stands to it in words. */
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

  /** How a figure stands to its target. */
  static String verdict(Figure figure, Range target, double value) {
    double beyond = target.beyond(value);
    if (!Double.isFinite(beyond)) {
      return "not measured";
    }
    String by = TextTable.number(Math.abs(beyond), 1) + " " + figure.unit();
    if (beyond == 0) {
      return "as wanted";
    }
    if (Math.abs(beyond) < 0.05) {
      return "at the edge";
    }
    if (isDistance(figure)) {
      return by + (beyond > 0 ? " too far out" : " too far back");
    }
    if (figure == Figure.HELICAL_SHOW_UPPER) {
      return by + (beyond > 0 ? " too much" : " too little");
    }
    return by + (beyond > 0 ? " too open" : " too tight");
  }

  private static boolean isDistance(Figure figure) {
    return Arrays.stream(Level.values()).map(LevelFigures::distance).anyMatch(figure::equals);
  }
}
