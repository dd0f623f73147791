package auricle.report;

import auricle.anatomy.Level;
import auricle.healing.Bands;
import auricle.healing.Bands.Band;
import auricle.healing.MomentResult;
import auricle.healing.Timeline;
import auricle.report.picture.LevelFigures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The bands of sampled tissues at the terminal: a row a time, ten and ninety per cent of each. */
final class BandText {
  private final Timeline timeline;
  private final Bands bands;

  private BandText(Timeline timeline, Bands bands) {
    this.timeline = timeline;
    this.bands = bands;
  }

  /** The lines; none without samples. */
  static String write(Timeline timeline) {
    return timeline.bands().map(bands -> new BandText(timeline, bands).text()).orElse("");
  }

  private String text() {
    int good = bands.samples() - bands.failures().size();
    StringBuilder text = new StringBuilder("\n");
    text.append(
        "  Spread by tissue, %d tissues drawn from the tables (seed %d): one in ten lies below%n"
            .formatted(good, bands.seed()));
    text.append("  each range, one in ten above it. Distances from the mastoid plane, mm\n");
    if (!bands.figures().isEmpty()) {
      text.append(table()).append(lost());
    }
    if (!bands.failures().isEmpty()) {
      text.append(
          "  %d of %d did not come to rest and take no part:%n"
              .formatted(bands.failures().size(), bands.samples()));
      bands.failures().forEach(words -> text.append("    ").append(words).append('\n'));
    }
    return text.toString();
  }

  private String table() {
    Level[] levels = Level.values();
    TextTable table = new TextTable("l" + "r".repeat(levels.length));
    List<String> head = new ArrayList<>(List.of(""));
    for (Level level : levels) {
      head.add(level.key());
    }
    table.row(head.toArray(String[]::new));
    for (MomentResult moment : timeline.moments()) {
      List<String> row = new ArrayList<>(List.of(moment.label()));
      for (Level level : levels) {
        Optional<Band> band = band(moment, LevelFigures.distance(level).key());
        row.add(band.map(b -> range(b, 1, 1)).orElse("-"));
      }
      table.row(row.toArray(String[]::new));
    }
    return table.text();
  }

  private String lost() {
    MomentResult last = timeline.last();
    String levels =
        Arrays.stream(Level.values())
            .flatMap(level -> lost(last, level).stream())
            .collect(Collectors.joining(", "));
    return levels.isEmpty() ? "" : "  Lost at " + last.label() + ": " + levels + "\n";
  }

  /** Nothing where the ear itself states no loss: there, only some of the samples have one. */
  private Optional<String> lost(MomentResult last, Level level) {
    if (!last.loss().containsKey(level)) {
      return Optional.empty();
    }
    return band(last, "loss_" + level.key()).map(b -> level.key() + " " + range(b, 100, 0) + " %");
  }

  private Optional<Band> band(MomentResult moment, String key) {
    return bands.figures().stream()
        .filter(b -> b.days() == moment.days() && b.key().equals(key))
        .findFirst();
  }

  private static String range(Band band, double times, int decimals) {
    return TextTable.number(times * band.low(), decimals)
        + " to "
        + TextTable.number(times * band.high(), decimals);
  }
}
