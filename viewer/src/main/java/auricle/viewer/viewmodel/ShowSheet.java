package auricle.viewer.viewmodel;

import auricle.measurement.HelicalShow;
import auricle.measurement.Measures;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Dot;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.List;
import java.util.Locale;

/** How far the helix stands beyond the antihelix, seen from the front, along the height. */
public final class ShowSheet {
  private static final double MOST_MM = 10;

  private final double width;
  private final double height;
  private final double em;

  /** On a sheet of a size; em is the height of a line of text, pixels. */
  public ShowSheet(double width, double height, double em) {
    this.width = width;
    this.height = height;
    this.em = em;
  }

  /** Draws before and now. */
  public Sheet draw(Rehearsed result, Moment now) {
    Sheet sheet = new Sheet(width, height);
    double low = result.ear().target().helicalShow_mm().low();
    double high = result.ear().target().helicalShow_mm().high();
    sheet.box(x(low), y(88), x(high) - x(low), y(60) - y(88), Tone.TARGET, 0.22);
    sheet.box(x(-MOST_MM / 2), y(100), x(0) - x(-MOST_MM / 2), y(0) - y(100), Tone.CAUTION, 0.1);
    for (int mm = -5; mm <= MOST_MM; mm += 5) {
      sheet.line(x(mm), y(100), x(mm), y(0), Tone.GRID, mm == 0 ? 1.8 : 0.7);
      sheet.words(
          x(mm),
          height - 0.7 * em,
          mm == 0 ? "0 mm" : "" + mm,
          Tone.FAINT,
          0.85,
          false,
          Hold.MIDDLE);
    }
    for (int level : new int[] {25, 50, 75}) {
      sheet.line(x(-MOST_MM / 2), y(level), x(MOST_MM), y(level), Tone.GRID, 0.7);
      sheet.words(
          x(-MOST_MM / 2) - 0.3 * em, y(level), level + " %", Tone.FAINT, 0.85, false, Hold.RIGHT);
    }
    sheet.words(x(-2.5), y(96), "hidden", Tone.CAUTION, 0.85, false, Hold.MIDDLE);
    sheet.words(x(5.5), y(96), "seen from the front", Tone.FAINT, 0.85, false, Hold.MIDDLE);
    line(sheet, result.before().measures(), Tone.BEFORE, 1.6);
    line(sheet, now.measures(), Tone.NOW, 2.8);
    return sheet;
  }

  /** The same in words, for those who do not see it. */
  public static String words(Moment now) {
    Measures m = now.measures();
    return String.format(
        Locale.ROOT,
        "Helical show: upper %.1f mm, middle %.1f mm, hidden over %.1f mm.",
        m.helicalShowUpper_mm(),
        m.helicalShowMiddle_mm(),
        m.hiddenHelixLength_mm());
  }

  private void line(Sheet sheet, Measures m, Tone tone, double lineWidth) {
    List<Dot> dots =
        m.showAlongHeight().stream()
            .filter(s -> Double.isFinite(s.show_mm()))
            .map(this::dot)
            .toList();
    sheet.line(dots, tone, lineWidth, false);
  }

  private Dot dot(HelicalShow s) {
    double mm = Math.max(-MOST_MM / 2, Math.min(MOST_MM, s.show_mm()));
    return new Dot(x(mm), y(s.level_percent()));
  }

  private double x(double mm) {
    double left = 3 * em;
    return left + (width - left - 0.8 * em) * (mm + MOST_MM / 2) / (1.5 * MOST_MM);
  }

  private double y(double level_percent) {
    return 0.3 * em + (height - 2 * em) * (1 - level_percent / 100);
  }
}
