package auricle.report;

import auricle.anatomy.Level;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.report.picture.LevelFigures;
import java.util.ArrayList;
import java.util.List;

/** The time after the operation at the terminal: a column a time, and what is lost by the last. */
final class CourseText {
  private CourseText() {}

  /** The lines. */
  static String write(Timeline timeline) {
    StringBuilder text =
        new StringBuilder("Over time (what the model foretells; no ear was followed)\n");
    if (!timeline.converged()) {
      text.append("  NOT IN EQUILIBRIUM at a time after the last shown: ");
      text.append(timeline.words()).append('\n');
    }
    if (!timeline.moments().isEmpty()) {
      text.append(table(timeline));
      text.append(BandText.write(timeline));
    }
    for (MomentResult moment : timeline.moments()) {
      moment.events().forEach(e -> text.append("  ").append(e).append('\n'));
    }
    return text.append('\n').toString();
  }

  private static String table(Timeline timeline) {
    List<MomentResult> moments = timeline.moments();
    TextTable table = new TextTable("l" + "r".repeat(moments.size()) + "r");
    List<String> head = new ArrayList<>(List.of(""));
    moments.forEach(m -> head.add(m.label().replaceAll(" months?$", " mo")));
    head.add("lost");
    table.row(head.toArray(String[]::new));
    for (Figure figure : LevelFigures.COURSE) {
      List<String> row = new ArrayList<>(List.of(figure.label() + ", " + figure.unit()));
      moments.forEach(m -> row.add(TextTable.number(figure.of(m.measures()), 1)));
      row.add(lost(timeline.last(), figure));
      table.row(row.toArray(String[]::new));
    }
    return table.text();
  }

  /** Share of the correction lost at the level whose distance the figure is. */
  private static String lost(MomentResult last, Figure figure) {
    for (Level level : Level.values()) {
      if (LevelFigures.distance(level) == figure && last.loss().containsKey(level)) {
        return lost(100 * last.loss().getOrDefault(level, Double.NaN));
      }
    }
    return "";
  }

  private static String lost(double percent) {
    return percent <= -0.5
        ? "gained " + TextTable.number(-percent, 0) + " %"
        : TextTable.number(percent, 0) + " %";
  }
}
