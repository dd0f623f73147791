package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.viewmodel.BalanceRow;
import auricle.viewer.viewmodel.Look;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Every level and angle before, now and after a year beside its target; a click lights it up. */
final class BalanceTable extends GridPane {
  /** A gauge narrower than this, in heights of text, has no room for the range in numbers. */
  private static final double RANGE_FROM_EM = 8;

  private static final List<String> HEADS =
      List.of("mm to head", "before", "now", "1 year", "target");
  private static final List<String> TONES = List.of("ink", "before", "now", "year", "target");

  private final Look look;
  private final Consumer<Level> light;
  private final List<Line> lines = new ArrayList<>();

  /** The cells of one row, filled anew at every change. */
  private record Line(Label name, Label before, Label now, Label year, SheetCanvas gauge) {
    void fill(BalanceRow row) {
      name.setText(row.label());
      before.setText(Texts.number(row.before(), row.unit()));
      now.setText(Texts.number(row.now(), row.unit()));
      year.setText(Texts.number(row.year(), row.unit()));
      gauge.show(
          (w, h, em) -> BalanceTable.gauge(row, w, h, em), row.label() + " " + row.verdict());
    }

    List<Node> cells() {
      return List.of(name, before, now, year, gauge);
    }
  }

  BalanceTable(Look look, Consumer<Level> light) {
    this.look = look;
    this.light = light;
    getStyleClass().add("balance-table");
    for (int i = 0; i < HEADS.size(); i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHgrow(Priority.ALWAYS);
      getColumnConstraints().add(column);
    }
    for (int i = 0; i < HEADS.size(); i++) {
      cell(head(i), i, 0);
    }
  }

  private static Label head(int i) {
    String tone = "tone-" + TONES.get(i);
    return i == 0
        ? Texts.paragraph(HEADS.get(i), "balance-head", tone)
        : whole(HEADS.get(i), "balance-head", tone);
  }

  /** A label that is never cut short. */
  private static Label whole(String words, String... styles) {
    Label label = Texts.label(words, styles);
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  /** Shows these rows: distances first, then a heading, then angles. */
  void show(List<BalanceRow> rows) {
    for (int i = lines.size(); i < rows.size(); i++) {
      add(rows.get(i), i);
    }
    for (int i = 0; i < rows.size(); i++) {
      lines.get(i).fill(rows.get(i));
    }
  }

  private void add(BalanceRow row, int i) {
    int levels = Level.values().length;
    if (i == levels) {
      Label second = Texts.label("angles; helical show in mm", "balance-head");
      setColumnSpan(second, 3);
      cell(second, 0, levels + 1);
    }
    Line line =
        new Line(
            Texts.paragraph("", "balance-name"),
            whole("", "balance-number", "tone-before"),
            whole("", "balance-number", "balance-now"),
            whole("", "balance-number", "tone-year"),
            new SheetCanvas(look, 2.1));
    line.gauge().getStyleClass().add("balance-gauge");
    lines.add(line);
    int r = i < levels ? i + 1 : i + 2;
    for (int c = 0; c < line.cells().size(); c++) {
      Node node = line.cells().get(c);
      row.level().ifPresent(level -> node.setOnMouseClicked(e -> light.accept(level)));
      cell(node, c, r);
    }
  }

  private void cell(Node node, int column, int row) {
    setHalignment(node, column == 0 ? HPos.LEFT : HPos.RIGHT);
    add(node, column, row);
  }

  /** A line of numbers with the band that is wanted, before, now and after a year. */
  private static Sheet gauge(BalanceRow row, double w, double h, double em) {
    Sheet sheet = new Sheet(w, h);
    double low = Math.min(row.target().low(), Math.min(row.before(), row.now()));
    double high = Math.max(row.target().high(), Math.max(row.before(), row.now()));
    double margin = 0.12 * Math.max(1, high - low);
    double from = low - margin;
    double per = (w - 0.8 * em) / (high - low + 2 * margin);
    double y = 0.55 * em;
    double left = 0.6 * em;
    sheet.line(left, y, w - 0.2 * em, y, Tone.GRID, 1.5);
    double band = left + per * (row.target().low() - from);
    double wide = Math.max(2, per * (row.target().high() - row.target().low()));
    sheet.box(band, y - 0.36 * em, wide, 0.72 * em, Tone.TARGET, 0.42);
    tick(sheet, left + per * (row.before() - from), y, em, Tone.BEFORE);
    if (Double.isFinite(row.year())) {
      tick(sheet, left + per * (row.year() - from), y, em, Tone.YEAR);
    }
    sheet.disc(left + per * (row.now() - from), y, 0.33 * em, Tone.NOW);
    String range = String.format(Locale.ROOT, "%.0f–%.0f", row.target().low(), row.target().high());
    if (w > RANGE_FROM_EM * em) {
      sheet.words(left, 1.55 * em, range, Tone.TARGET, 0.82, false, Hold.LEFT);
    }
    sheet.words(
        w - 0.2 * em,
        1.55 * em,
        row.verdict(),
        row.met() ? Tone.TARGET : Tone.CAUTION,
        0.82,
        !row.met(),
        Hold.RIGHT);
    return sheet;
  }

  private static void tick(Sheet sheet, double x, double y, double em, Tone tone) {
    sheet.line(x, y - 0.4 * em, x, y + 0.4 * em, tone, 2.2);
  }
}
