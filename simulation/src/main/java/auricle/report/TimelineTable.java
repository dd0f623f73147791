package auricle.report;

import auricle.anatomy.Level;
import auricle.healing.Bands;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.measurement.Figure;
import auricle.rehearsal.RehearsalResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The time after the operation as CSV: a row a time, every measurement, the share of the correction
 * lost, the measurement if all threads were cut then, and the band of sampled tissues.
 */
final class TimelineTable {
  private TimelineTable() {}

  /** The file. */
  static String write(List<RehearsalResult> ears) {
    CsvText csv = new CsvText(columns());
    for (RehearsalResult ear : ears) {
      ear.timeline().ifPresent(t -> t.moments().forEach(m -> csv.row(row(ear, t, m))));
    }
    return csv.toString();
  }

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("side", "days", "label", "converged"));
    each(columns, "");
    Arrays.stream(Level.values()).map(l -> "loss_share_" + l.key()).forEach(columns::add);
    each(columns, "released_");
    each(columns, "low_10_");
    each(columns, "high_90_");
    return columns;
  }

  private static void each(List<String> columns, String prefix) {
    Arrays.stream(Figure.values()).map(f -> prefix + f.key()).forEach(columns::add);
  }

  private static List<Object> row(RehearsalResult ear, Timeline timeline, MomentResult moment) {
    List<Object> row = new ArrayList<>();
    row.add(EarNames.key(ear));
    row.add(moment.days());
    row.add(moment.label());
    row.add(timeline.converged());
    for (Figure figure : Figure.values()) {
      row.add(figure.of(moment.measures()));
    }
    for (Level level : Level.values()) {
      row.add(moment.loss().getOrDefault(level, Double.NaN));
    }
    for (Figure figure : Figure.values()) {
      row.add(moment.released().map(figure::of).orElse(Double.NaN));
    }
    List<Bands.Band> bands = timeline.bands().map(Bands::figures).orElse(List.of());
    for (Figure figure : Figure.values()) {
      row.add(band(bands, figure, moment).map(Bands.Band::low).orElse(Double.NaN));
    }
    for (Figure figure : Figure.values()) {
      row.add(band(bands, figure, moment).map(Bands.Band::high).orElse(Double.NaN));
    }
    return row;
  }

  /** The band of a figure at a time, if there is one. */
  static java.util.Optional<Bands.Band> band(
      List<Bands.Band> bands, Figure figure, MomentResult moment) {
    return bands.stream()
        .filter(b -> b.key().equals(figure.key()) && b.days() == moment.days())
        .findFirst();
  }
}
