package auricle.report.picture;

import auricle.anatomy.Level;
import auricle.measurement.Figure;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which figures belong to which level. */
public final class LevelFigures {
  private static final Map<Level, Figure> DISTANCES =
      Map.copyOf(
          new EnumMap<>(
              Map.of(
                  Level.UPPER, Figure.HELIX_MASTOID_UPPER,
                  Level.MIDDLE, Figure.HELIX_MASTOID_MIDDLE,
                  Level.LOWER, Figure.HELIX_MASTOID_LOWER,
                  Level.LOBULE, Figure.LOBULE_MASTOID)));

  /** What is followed over the year after the operation, in order. */
  public static final List<Figure> COURSE =
      List.of(
          Figure.HELIX_MASTOID_UPPER,
          Figure.HELIX_MASTOID_MIDDLE,
          Figure.HELIX_MASTOID_LOWER,
          Figure.LOBULE_MASTOID,
          Figure.FOLD_ANGLE_UPPER,
          Figure.FOLD_ANGLE_MIDDLE);

  private LevelFigures() {}

  /** The distance from the mastoid plane at a level. */
  public static Figure distance(Level level) {
    Figure figure = DISTANCES.get(level);
    if (figure == null) {
      throw new IllegalArgumentException("no distance at " + level);
    }
    return figure;
  }

  /** Name of a level at the head of a panel. */
  static String name(Level level) {
    String key = level.key();
    return key.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + key.substring(1);
  }
}
