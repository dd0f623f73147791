package auricle.viewer.view;

import auricle.measurement.Measures;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.ChangeTable;
import auricle.viewer.viewmodel.CourseSheet;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Showing;
import auricle.viewer.viewmodel.Solving;
import java.util.List;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The course of the ear: a chart over steps and the year, and what each step changed. */
final class CoursePane extends SidePane {
  private static final List<String> HEADS = List.of("Up", "Mid", "Low", "Lob", "Fold°", "Show");

  private final Showing showing;
  private final SheetCanvas chart;
  private final GridPane table = new GridPane();
  private final VBox notes = new VBox(4);

  CoursePane(Showing showing, Solving solving, Look look) {
    super("course");
    this.showing = showing;
    this.chart = new SheetCanvas(look, 19).growing();
    table.getStyleClass().add("change-table");
    for (int i = 0; i <= HEADS.size(); i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(i == 0 ? 28 : 12);
      table.getColumnConstraints().add(column);
    }
    getChildren()
        .addAll(
            Texts.label("Distance from the head, mm", "sub-title"),
            chart,
            new BandRow(solving),
            notes,
            Texts.label("What each step changed (mm, deg)", "sub-title"),
            table);
    showing.moment().addListener(o -> changed());
  }

  @Override
  void draw() {
    if (showing.result().get().isEmpty()) {
      return;
    }
    Rehearsed result = showing.result().get().get();
    int shown = showing.index();
    chart.show(
        (w, h, em) ->
            new CourseSheet(result, w, h, em).draw(Math.min(shown, result.course().size() - 1)),
        "Distance of each level from the head over the course");
    chart.setOnMouseClicked(e -> showNearest(result, e.getX()));
    table(result);
    notes(result);
  }

  private void showNearest(Rehearsed result, double x) {
    CourseSheet sheet = new CourseSheet(result, chart.getWidth(), chart.getHeight(), 13);
    int best = 0;
    for (int i = 1; i < result.course().size(); i++) {
      if (Math.abs(sheet.x(i) - x) < Math.abs(sheet.x(best) - x)) {
        best = i;
      }
    }
    showing.show(best);
  }

  private void table(Rehearsed result) {
    table.getChildren().clear();
    for (int i = 0; i < HEADS.size(); i++) {
      cell(Texts.label(HEADS.get(i), "change-head"), i + 1, 0);
    }
    int r = 1;
    for (ChangeTable.Row row : ChangeTable.rows(result)) {
      Label name = Texts.paragraph(row.label(), "balance-name");
      if (!row.converged()) {
        name.getStyleClass().add("not-at-rest");
        name.setText(row.label() + " (not at rest)");
      }
      cell(name, 0, r);
      for (int i = 0; i < row.changes().size(); i++) {
        cell(Texts.label(change(row.changes().get(i)), "change-number"), i + 1, r);
      }
      r++;
    }
  }

  private static String change(double v) {
    if (!Double.isFinite(v)) {
      return "–";
    }
    return Math.abs(v) < 0.05 ? "0" : String.format(Locale.ROOT, "%+.1f", v).replace('-', '−');
  }

  private void cell(Node node, int column, int row) {
    GridPane.setHalignment(node, column == 0 ? HPos.LEFT : HPos.RIGHT);
    table.add(node, column, row);
  }

  /** What the solver said about the moment that is shown. */
  private void notes(Rehearsed result) {
    notes.getChildren().clear();
    Moment now = showing.moment().get().orElse(result.tied());
    for (String event : now.outcome().events()) {
      notes.getChildren().add(Texts.paragraph(Texts.upper(event) + ".", "hint"));
    }
    now.released()
        .ifPresent(m -> notes.getChildren().add(Texts.paragraph(released(now, m), "hint")));
    if (result.times().isEmpty()) {
      notes
          .getChildren()
          .add(Texts.paragraph("The year after the operation is not worked out yet.", "hint"));
    }
  }

  private static String released(Moment now, Measures m) {
    return String.format(
        Locale.ROOT,
        "Release test: with every thread cut at %s the rim would come to rest at %.1f (upper), %.1f"
            + " (middle) and %.1f mm (lower) from the head, the lobule at %.1f mm, the fold angle at"
            + " %.0f° (upper) and %.0f° (middle).",
        now.label(),
        m.helixMastoidUpper_mm(),
        m.helixMastoidMiddle_mm(),
        m.helixMastoidLower_mm(),
        m.lobuleMastoid_mm(),
        m.foldAngleUpper_deg(),
        m.foldAngleMiddle_deg());
  }
}
