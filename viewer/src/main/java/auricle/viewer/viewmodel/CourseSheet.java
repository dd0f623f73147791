package auricle.viewer.viewmodel;

import auricle.anatomy.Level;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Dot;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Band;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Distance of every level from the head over the steps and the year after them. */
public final class CourseSheet {
  private static final Map<Level, Tone> TONES =
      Map.of(
          Level.UPPER, Tone.UPPER,
          Level.MIDDLE, Tone.MIDDLE,
          Level.LOWER, Tone.LOWER,
          Level.LOBULE, Tone.LOBULE);

  private final double em;
  private final double width;
  private final double height;
  private final Rehearsed result;
  private final double most;

  /** For a result, on a sheet of a size; em is the height of a line of text, pixels. */
  public CourseSheet(Rehearsed result, double width, double height, double em) {
    this.result = result;
    this.width = width;
    this.height = height;
    this.em = em;
    double greatest = 20;
    for (Moment m : result.course()) {
      for (Level level : Level.values()) {
        greatest = Math.max(greatest, value(m, level));
      }
    }
    this.most = Math.ceil(greatest / 5) * 5;
  }

  private static double value(Moment m, Level level) {
    return Balance.distance(level).applyAsDouble(m.measures());
  }

  /** Where a moment of the course stands. */
  public double x(int index) {
    int count = result.course().size();
    return 2.6 * em + (width - 7.4 * em) * (count < 2 ? 0 : index / (count - 1.0));
  }

  private double y(double mm) {
    return 1.2 * em + (height - 3.4 * em) * (1 - mm / most);
  }

  /** Draws it with the moment that is shown marked. */
  public Sheet draw(int shown) {
    Sheet sheet = new Sheet(width, height);
    for (int mm = 0; mm <= most; mm += 5) {
      sheet.line(x(0), y(mm), width - 4.8 * em, y(mm), Tone.GRID, 0.7);
      sheet.words(2.2 * em, y(mm), Integer.toString(mm), Tone.FAINT, 0.85, false, Hold.RIGHT);
    }
    int steps = result.steps().size();
    if (!result.times().isEmpty()) {
      double between = (x(steps - 1) + x(steps)) / 2;
      sheet.line(between, y(most), between, y(0), Tone.GRID, 1.4);
      sheet.words(between + 0.4 * em, y(most), "healing", Tone.FAINT, 0.85, false, Hold.LEFT);
    }
    sheet.words(x(0), y(most), "operation", Tone.FAINT, 0.85, false, Hold.LEFT);
    sheet.line(x(shown), y(most), x(shown), y(0), Tone.NOW, 1.5);
    List<Double> taken = new ArrayList<>();
    for (Level level : Level.values()) {
      level(sheet, level, taken);
    }
    sheet.words(
        x(shown),
        height - 0.8 * em,
        result.course().get(shown).label(),
        Tone.NOW,
        0.9,
        true,
        hold(shown));
    return sheet;
  }

  private Hold hold(int shown) {
    double share = shown / Math.max(1.0, result.course().size() - 1.0);
    return share < 0.25 ? Hold.LEFT : share > 0.75 ? Hold.RIGHT : Hold.MIDDLE;
  }

  private void level(Sheet sheet, Level level, List<Double> taken) {
    Tone tone = TONES.getOrDefault(level, Tone.INK);
    bands(sheet, level, tone);
    List<Dot> dots = new ArrayList<>();
    List<Moment> course = result.course();
    for (int i = 0; i < course.size(); i++) {
      dots.add(new Dot(x(i), y(value(course.get(i), level))));
    }
    sheet.line(dots, tone, 2, level == Level.LOBULE);
    dots.forEach(d -> sheet.disc(d.x(), d.y(), 2.6, tone));
    double at = dots.get(dots.size() - 1).y();
    while (true) {
      double here = at;
      if (taken.stream().noneMatch(t -> Math.abs(t - here) < 0.95 * em)) {
        break;
      }
      at += 0.25 * em;
    }
    taken.add(at);
    sheet.words(width - 4.5 * em, at, Balance.label(level), tone, 0.95, true, Hold.LEFT);
  }

  private void bands(Sheet sheet, Level level, Tone tone) {
    String key = auricle.plan.Target.key(level);
    List<Dot> upper = new ArrayList<>();
    List<Dot> lower = new ArrayList<>();
    List<Moment> course = result.course();
    for (int i = result.steps().size(); i < course.size(); i++) {
      for (Band b : result.bands()) {
        if (b.figure().equals(key) && Math.abs(b.days() - course.get(i).days()) < 1e-6) {
          upper.add(new Dot(x(i), y(b.high())));
          lower.add(0, new Dot(x(i), y(b.low())));
        }
      }
    }
    upper.addAll(lower);
    if (upper.size() > 3) {
      sheet.area(upper, tone, 0.18);
    }
  }
}
