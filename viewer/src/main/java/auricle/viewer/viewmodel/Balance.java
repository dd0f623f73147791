package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.measurement.Measures;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The balance of an ear: each level and angle before, now, after a year, beside what is wanted. */
public final class Balance {
  private static final double YEAR_DAYS = 365;
  private static final double NEAR_DAYS = 40;

  private Balance() {}

  /** The rows for a moment of a result. */
  public static List<BalanceRow> rows(Rehearsed result, Moment now) {
    Target target = result.ear().target();
    List<BalanceRow> rows = new ArrayList<>();
    for (Level level : Level.values()) {
      Range range = target.helixMastoid_mm().getOrDefault(level, Range.of(0, 60));
      rows.add(row(result, now, label(level), "mm", distance(level), range, Optional.of(level)));
    }
    rows.add(
        row(
            result,
            now,
            "Fold, upper",
            "deg",
            Measures::foldAngleUpper_deg,
            target.foldAngleUpper_deg(),
            Optional.of(Level.UPPER)));
    rows.add(
        row(
            result,
            now,
            "Fold, middle",
            "deg",
            Measures::foldAngleMiddle_deg,
            target.foldAngleMiddle_deg(),
            Optional.of(Level.MIDDLE)));
    rows.add(
        row(
            result,
            now,
            "Ear to head",
            "deg",
            Measures::auriculocephalicAngle_deg,
            target.auriculocephalicAngle_deg(),
            Optional.of(Level.MIDDLE)));
    rows.add(
        row(
            result,
            now,
            "Helical show",
            "mm",
            Measures::helicalShowUpper_mm,
            target.helicalShow_mm(),
            Optional.of(Level.UPPER)));
    return rows;
  }

  /** Distance of the rim, or of the lobule, from the mastoid plane at a level. */
  public static ToDoubleFunction<Measures> distance(Level level) {
    return switch (level) {
      case UPPER -> Measures::helixMastoidUpper_mm;
      case MIDDLE -> Measures::helixMastoidMiddle_mm;
      case LOWER -> Measures::helixMastoidLower_mm;
      case LOBULE -> Measures::lobuleMastoid_mm;
    };
  }

  /** Name of a level as shown. */
  public static String label(Level level) {
    return switch (level) {
      case UPPER -> "Upper";
      case MIDDLE -> "Middle";
      case LOWER -> "Lower";
      case LOBULE -> "Lobule";
    };
  }

  private static BalanceRow row(
      Rehearsed result,
      Moment now,
      String label,
      String unit,
      ToDoubleFunction<Measures> figure,
      Range target,
      Optional<Level> level) {
    return new BalanceRow(
        label,
        unit,
        figure.applyAsDouble(result.before().measures()),
        figure.applyAsDouble(now.measures()),
        year(result).map(m -> figure.applyAsDouble(m.measures())).orElse(Double.NaN),
        target,
        level);
  }

  /** The moment a year after, if the course reaches so far. */
  public static Optional<Moment> year(Rehearsed result) {
    return result.times().stream()
        .filter(m -> Math.abs(m.days() - YEAR_DAYS) < NEAR_DAYS)
        .reduce((a, b) -> b);
  }
}
