package auricle.regression;

import auricle.anatomy.Side;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.rehearsal.RehearsalResult;
import auricle.scenario.ScenarioRuns;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The figures of the shipped scenarios, now and as they were approved, by scenario, ear, time. */
final class EarlierFigures {
  /** Figures of the thirds: mm and deg. Counts and smallest radii jump, so they are left out. */
  private static final List<Figure> HELD =
      List.of(
          Figure.HELIX_MASTOID_UPPER,
          Figure.HELIX_MASTOID_MIDDLE,
          Figure.HELIX_MASTOID_LOWER,
          Figure.LOBULE_MASTOID,
          Figure.FOLD_ANGLE_UPPER,
          Figure.FOLD_ANGLE_MIDDLE,
          Figure.AURICULOCEPHALIC_ANGLE,
          Figure.BOWL_DEPTH,
          Figure.HELICAL_SHOW_UPPER,
          Figure.HELICAL_SHOW_MIDDLE);

  private EarlierFigures() {}

  /** The row of a table without its value, and the value; in a fixed order. */
  static Map<String, Double> of(Path scenario) {
    Map<String, Double> figures = new LinkedHashMap<>();
    String name = scenario.getFileName().toString().replace(".yaml", "");
    for (Map.Entry<Side, RehearsalResult> ear : ScenarioRuns.of(scenario).entrySet()) {
      String start = name + "," + ear.getKey().name().toLowerCase(Locale.ROOT);
      add(figures, start + ",before", ear.getValue().before().measures());
      add(figures, start + ",after", ear.getValue().after().measures());
      ear.getValue()
          .timeline()
          .filter(Timeline::converged)
          .ifPresent(year -> add(figures, start + ",last_moment", year.last().measures()));
    }
    return figures;
  }

  private static void add(Map<String, Double> figures, String start, Measures measures) {
    HELD.forEach(f -> figures.put(start + "," + f.key(), f.of(measures)));
  }

  /** The whole table as it is now, line by line. */
  static List<String> table() {
    List<String> lines = new ArrayList<>();
    lines.add("# Our own earlier values, mm and deg, planning mesh. They validate nothing.");
    lines.add("scenario,ear,moment,figure,value");
    for (Path scenario : ScenarioRuns.files()) {
      of(scenario).forEach((row, value) -> lines.add(line(row, value)));
    }
    return lines;
  }

  private static String line(String row, double value) {
    return row + "," + String.format(Locale.ROOT, "%.6f", value);
  }
}
