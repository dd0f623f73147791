package auricle.viewer.viewmodel;

import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.SectionCut;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Dot;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A horizontal section through the ear, seen from above: head below, lateral up, front to the right
 * for a right ear. Before, now and after a year over each other, with the distance of the rim.
 */
public final class SectionSheet {
  private static final double WALL_MM = 1.6;

  private final double level_percent;
  private final boolean left;
  private final double em;
  private double perMm = 1;
  private double middleX;
  private double baseY;

  /**
   * @param level_percent height of the cut, % of ear height
   * @param em height of a line of text, pixels
   */
  public SectionSheet(double level_percent, boolean left, double em) {
    this.level_percent = level_percent;
    this.left = left;
    this.em = em;
  }

  /** Draws it. */
  public Sheet draw(Rehearsed result, Moment now, double width, double height) {
    Sheet sheet = new Sheet(width, height);
    Extent extent = Extent.of(result, level_percent);
    perMm = Math.min(width / (extent.width() + 8), (height - 3.2 * em) / (extent.depth() + 7));
    middleX = width / 2 - (left ? -1 : 1) * perMm * extent.middle();
    baseY = height - 1.9 * em;
    grid(sheet, width);
    target(sheet, result, width);
    shape(sheet, result.before().surface(), Tone.BEFORE, true);
    Balance.year(result)
        .filter(m -> !m.equals(now))
        .ifPresent(m -> shape(sheet, m.surface(), Tone.YEAR, true));
    shape(sheet, now.surface(), Tone.NOW, false);
    dimension(sheet, result.before().surface(), Tone.BEFORE, width - 3.4 * em, width);
    dimension(sheet, now.surface(), Tone.NOW, width - 1.2 * em, width);
    caption(sheet, width, height);
    return sheet;
  }

  private Dot dot(Spot spot) {
    return new Dot(middleX + (left ? -1 : 1) * perMm * spot.y_mm(), baseY - perMm * spot.x_mm());
  }

  private void grid(Sheet sheet, double width) {
    for (int x = 0; x <= 40; x += 10) {
      double y = baseY - perMm * x;
      if (y > em) {
        sheet.line(0, y, width, y, Tone.GRID, x == 0 ? 2 : 0.6);
        sheet.words(
            0.2 * em,
            y - 0.55 * em,
            x == 0 ? "head" : x + " mm",
            Tone.FAINT,
            0.85,
            false,
            Hold.LEFT);
      }
    }
  }

  private void target(Sheet sheet, Rehearsed result, double width) {
    Balance.rows(result, result.before()).stream()
        .filter(r -> r.unit().equals("mm") && r.label().length() < 8)
        .filter(
            r -> r.level().map(l -> Math.abs(l.heightPercent() - level_percent) < 6).orElse(false))
        .findFirst()
        .ifPresent(
            r -> {
              double top = baseY - perMm * r.target().high();
              sheet.box(
                  0, top, width, perMm * (r.target().high() - r.target().low()), Tone.TARGET, 0.22);
              double middle = 0.6 * width; // over the bowl, where the profile is low
              sheet.words(middle, top + 0.65 * em, "target", Tone.TARGET, 0.85, true, Hold.MIDDLE);
            });
  }

  private void shape(Sheet sheet, EarSurface surface, Tone tone, boolean thin) {
    double z = SectionCut.height_mm(surface, level_percent);
    for (List<Spot> chain : SectionCut.at(surface, z)) {
      List<Dot> dots = chain.stream().map(this::dot).toList();
      sheet.line(dots, tone, thin ? 1.4 : Math.max(2.5, perMm * WALL_MM), false);
    }
  }

  private void dimension(Sheet sheet, EarSurface surface, Tone tone, double x, double width) {
    Optional<Spot> rim = Extent.mostLateral(surface, level_percent);
    if (rim.isPresent()) {
      Dot top = dot(rim.orElseThrow());
      double at = Math.min(x, width - 1.2 * em);
      sheet.line(List.of(top, new Dot(at, top.y())), tone, 0.8, true);
      sheet.line(at, top.y(), at, baseY, tone, 1.2);
      arrow(sheet, at, top.y(), 1, tone);
      arrow(sheet, at, baseY, -1, tone);
      String words = String.format(Locale.ROOT, "%.1f", rim.orElseThrow().x_mm());
      sheet.words(at, top.y() - 0.7 * em, words, tone, 1, true, Hold.MIDDLE);
    }
  }

  private void arrow(Sheet sheet, double x, double y, int way, Tone tone) {
    sheet.area(
        List.of(new Dot(x, y), new Dot(x - 3, y + way * 7), new Dot(x + 3, y + way * 7)), tone, 1);
  }

  private void caption(Sheet sheet, double width, double height) {
    double y = height - 0.7 * em;
    sheet.words(0.2 * em, y, left ? "front" : "back", Tone.FAINT, 0.85, false, Hold.LEFT);
    sheet.words(width - 0.2 * em, y, left ? "back" : "front", Tone.FAINT, 0.85, false, Hold.RIGHT);
    String words = String.format(Locale.ROOT, "level %.0f %%, from above, mm", level_percent);
    sheet.words(width / 2, y, words, Tone.FAINT, 0.85, false, Hold.MIDDLE);
  }

  /** How far the section of before and now reaches, mm. */
  private record Extent(double low, double high, double depth) {
    static Extent of(Rehearsed result, double level_percent) {
      double low = -15;
      double high = 15;
      double depth = 25;
      EarSurface s = result.before().surface();
      for (List<Spot> chain : SectionCut.at(s, SectionCut.height_mm(s, level_percent))) {
        for (Spot p : chain) {
          low = Math.min(low, p.y_mm());
          high = Math.max(high, p.y_mm());
          depth = Math.max(depth, p.x_mm());
        }
      }
      return new Extent(low, high, depth);
    }

    static Optional<Spot> mostLateral(EarSurface s, double level_percent) {
      return SectionCut.at(s, SectionCut.height_mm(s, level_percent)).stream()
          .flatMap(List::stream)
          .max(java.util.Comparator.comparingDouble(Spot::x_mm));
    }

    double width() {
      return high - low;
    }

    double middle() {
      return (low + high) / 2;
    }
  }
}
