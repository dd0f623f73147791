package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Caution;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Balance;
import auricle.viewer.viewmodel.BalanceRow;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.ShowSheet;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The balance: every level before, now and after a year beside its target; threads; cautions. */
final class BalancePane extends VBox {
  private final Showing showing;
  private final PlanSteps steps;
  private final Look look;
  private final Consumer<Level> light;
  private final GridPane table = new GridPane();
  private final VBox cautions = new VBox(6);
  private final VBox threads = new VBox(4);
  private final SheetCanvas show;

  BalancePane(Showing showing, PlanSteps steps, Look look, Consumer<Level> light) {
    this.showing = showing;
    this.steps = steps;
    this.look = look;
    this.light = light;
    this.show = new SheetCanvas(look, 13);
    setId("balance");
    getStyleClass().add("side-pane");
    table.getStyleClass().add("balance-table");
    columns();
    getChildren()
        .addAll(
            table,
            Texts.label("Cautions", "sub-title"),
            cautions,
            Texts.label("Thread tension against its limit", "sub-title"),
            threads,
            Texts.label("Helix beyond antihelix, seen from the front", "sub-title"),
            show);
    showing.moment().addListener(o -> draw());
    look.textScale().addListener(o -> draw());
    draw();
  }

  private void columns() {
    double[] share = {26, 13, 13, 13, 35};
    for (double s : share) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(s);
      column.setHgrow(Priority.ALWAYS);
      table.getColumnConstraints().add(column);
    }
  }

  private void draw() {
    if (showing.result().get().isEmpty() || showing.moment().get().isEmpty()) {
      return;
    }
    Rehearsed result = showing.result().get().get();
    Moment now = showing.moment().get().get();
    table.getChildren().clear();
    head();
    int r = 1;
    for (BalanceRow row : Balance.rows(result, now)) {
      if (r == 5) {
        r++;
      }
      row(r++, row);
    }
    cautions(result);
    threads(now);
    show.show((w, h, em) -> new ShowSheet(w, h, em).draw(result, now), ShowSheet.words(now));
  }

  private void head() {
    List<String> heads = List.of("mm to head", "before", "now", "1 year", "target");
    for (int i = 0; i < heads.size(); i++) {
      Label label =
          Texts.label(
              heads.get(i),
              "balance-head",
              "tone-" + List.of("ink", "before", "now", "year", "target").get(i));
      cell(label, i, 0);
    }
    cell(Texts.label("angles", "balance-head"), 0, 5);
  }

  private void row(int r, BalanceRow row) {
    cell(Texts.label(row.label(), "balance-name"), 0, r);
    cell(
        Texts.label(Texts.number(row.before(), row.unit()), "balance-number", "tone-before"), 1, r);
    cell(Texts.label(Texts.number(row.now(), row.unit()), "balance-number", "balance-now"), 2, r);
    cell(Texts.label(Texts.number(row.year(), row.unit()), "balance-number", "tone-year"), 3, r);
    SheetCanvas gauge = new SheetCanvas(look, 2.1);
    gauge.show((w, h, em) -> gauge(row, w, h, em), row.label() + " " + row.verdict());
    cell(gauge, 4, r);
    row.level().ifPresent(level -> table.getChildren().forEach(n -> lightOnHover(n, r, level)));
  }

  private void lightOnHover(Node node, int r, Level level) {
    if (GridPane.getRowIndex(node) == r) {
      node.setOnMouseClicked(e -> light.accept(level));
    }
  }

  private void cell(Node node, int column, int row) {
    GridPane.setHalignment(node, column == 0 ? HPos.LEFT : HPos.RIGHT);
    table.add(node, column, row);
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
    sheet.words(left, 1.55 * em, range, Tone.TARGET, 0.82, false, Hold.LEFT);
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

  private void cautions(Rehearsed result) {
    cautions.getChildren().clear();
    if (result.cautions().isEmpty()) {
      cautions.getChildren().add(Texts.paragraph("None.", "hint"));
    }
    for (Caution caution : result.cautions()) {
      Button button = new Button(caution.words());
      button.setWrapText(true);
      button.setMaxWidth(Double.MAX_VALUE);
      button.setMinHeight(USE_PREF_SIZE);
      button.getStyleClass().add("caution");
      button.setTooltip(new javafx.scene.control.Tooltip(caution.basis()));
      button.setOnAction(e -> lightUp(caution));
      cautions.getChildren().add(button);
    }
  }

  private void lightUp(Caution caution) {
    if (!caution.operation().isEmpty()) {
      steps.choose(caution.operation());
    }
    caution.levels_percent().stream().findFirst().ifPresent(p -> light.accept(nearest(p)));
  }

  private static Level nearest(double percent) {
    return java.util.Arrays.stream(Level.values())
        .min(java.util.Comparator.comparingDouble(l -> Math.abs(l.heightPercent() - percent)))
        .orElse(Level.MIDDLE);
  }

  private void threads(Moment now) {
    threads.getChildren().clear();
    if (now.threads().isEmpty()) {
      threads.getChildren().add(Texts.paragraph("No thread is tied at this moment.", "hint"));
    }
    for (ThreadState t : now.threads()) {
      SheetCanvas bar = new SheetCanvas(look, 2.2);
      String words =
          t.slack()
              ? "slack"
              : String.format(
                  Locale.ROOT,
                  "%.2f N of %.1f N",
                  t.tension_n(),
                  Math.min(t.knotPull_n(), t.tearThrough_n()));
      bar.show((w, h, em) -> threadBar(t, words, w, em), t.name() + " " + words);
      bar.setOnMouseClicked(e -> steps.choose(t.name()));
      threads.getChildren().add(bar);
    }
  }

  private static Sheet threadBar(ThreadState t, String words, double w, double em) {
    Sheet sheet = new Sheet(w, 2.2 * em);
    double limit = Math.min(t.knotPull_n(), t.tearThrough_n());
    double share = Math.max(0, Math.min(1, t.tension_n() / limit));
    sheet.words(0, 0.6 * em, t.name(), Tone.INK, 0.95, false, Hold.LEFT);
    sheet.words(w, 0.6 * em, words, Tone.FAINT, 0.95, false, Hold.RIGHT);
    sheet.box(0, 1.4 * em, w, 0.4 * em, Tone.GRID, 0.7);
    sheet.box(
        0, 1.4 * em, Math.max(2, w * share), 0.4 * em, share > 0.5 ? Tone.CAUTION : Tone.NOW, 1);
    return sheet;
  }
}
