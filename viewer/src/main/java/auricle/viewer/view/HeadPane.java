package auricle.viewer.view;

import auricle.viewer.scene.HeadScene;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.OtherSide;
import auricle.viewer.viewmodel.Showing;
import auricle.viewer.viewmodel.Sides;
import java.util.List;
import java.util.Locale;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;

/** Both ears on a schematic head, from the front: where the balance of the two sides is judged. */
final class HeadPane extends SidePane {
  private static final double SHAPE = 1.1;

  private final Showing showing;
  private final OtherSide other;
  private final HeadScene scene = new HeadScene();
  private final Pane frame = new Pane(scene.picture());
  private final GridPane table = new GridPane();
  private final Label words = Texts.paragraph("", "hint");

  HeadPane(Showing showing, OtherSide other, Look look) {
    super("head");
    this.showing = showing;
    this.other = other;
    scene.picture().widthProperty().bind(frame.widthProperty());
    scene.picture().heightProperty().bind(frame.heightProperty());
    scene.picture().setMouseTransparent(true);
    frame.setId("head-picture");
    frame.prefHeightProperty().bind(widthProperty().multiply(SHAPE));
    look.theme().addListener((o, was, now) -> scene.picture().setFill(Tones.backdrop(now)));
    scene.picture().setFill(Tones.backdrop(look.theme().get()));
    table.getStyleClass().add("balance-table");
    for (double s : new double[] {26, 18, 18, 38}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(s);
      table.getColumnConstraints().add(column);
    }
    FlowPane views =
        new FlowPane(
            6,
            4,
            view("From the front", 0, 0),
            view("From behind", 180, 0),
            view("From above", 0, 89));
    HBox names =
        new HBox(
            Texts.label("Right ear", "sub-title"), gap(), Texts.label("Left ear", "sub-title"));
    getChildren().addAll(views, names, frame, words, table);
    showing.moment().addListener(o -> changed());
    other.result().addListener(o -> changed());
  }

  private static Pane gap() {
    Pane gap = new Pane();
    HBox.setHgrow(gap, javafx.scene.layout.Priority.ALWAYS);
    return gap;
  }

  private Button view(String label, double around_deg, double up_deg) {
    Button button = new Button(label);
    button.setOnAction(e -> scene.turn(around_deg, up_deg));
    return button;
  }

  @Override
  void seenNow(boolean now) {
    other.look(now);
  }

  @Override
  void draw() {
    var result = showing.result().get();
    var moment = showing.moment().get();
    if (result.isEmpty() || moment.isEmpty()) {
      return;
    }
    boolean pair = other.other().isPresent();
    Sides sides = Sides.of(result.get(), moment.get(), other.result().get(), pair);
    scene.show(sides.right().map(m -> m.surface()), sides.left().map(m -> m.surface()));
    words.setText(sides.words());
    table(sides);
  }

  private void table(Sides sides) {
    table.getChildren().clear();
    List<String> heads =
        List.of(
            "mm to head",
            "right",
            "left",
            String.format(Locale.ROOT, "apart, ≤ %.0f", sides.most()));
    for (int i = 0; i < heads.size(); i++) {
      cell(Texts.label(heads.get(i), "balance-head"), i, 0);
    }
    int r = 1;
    for (Sides.Row row : sides.rows()) {
      cell(Texts.label(row.label(), "balance-name"), 0, r);
      cell(Texts.label(Texts.number(row.right(), "mm"), "balance-number"), 1, r);
      cell(Texts.label(Texts.number(row.left(), "mm"), "balance-number"), 2, r);
      Label difference = Texts.label(verdict(row), "balance-number");
      difference.getStyleClass().add(row.within() ? "tone-target" : "not-at-rest");
      cell(difference, 3, r++);
    }
  }

  private static String verdict(Sides.Row row) {
    if (Double.isNaN(row.difference())) {
      return "–";
    }
    String number = String.format(Locale.ROOT, "%+.1f", row.difference()).replace('-', '−');
    return number + (row.within() ? " within" : " beyond");
  }

  private void cell(Label node, int column, int row) {
    GridPane.setHalignment(node, column == 0 ? HPos.LEFT : HPos.RIGHT);
    table.add(node, column, row);
  }
}
