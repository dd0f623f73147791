package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.viewer.viewmodel.Kind;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The steps of the plan in order, and the doses of the one that is worked on. */
final class PlanPane extends VBox {
  private final PlanSteps steps;
  private final VBox rows = new VBox();
  private final DosePane doses;
  private final List<HBox> rowNodes = new ArrayList<>();
  private List<Operation> drawn = List.of();

  PlanPane(PlanSteps steps, Look look) {
    this.steps = steps;
    this.doses = new DosePane(steps, look);
    getStyleClass().add("plan-pane");
    setId("plan");
    rows.getStyleClass().add("step-rows");
    ScrollPane list = new ScrollPane(rows);
    list.setFitToWidth(true);
    list.getStyleClass().add("step-list");
    ScrollPane editor = new ScrollPane(doses);
    editor.setFitToWidth(true);
    editor.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(editor, Priority.ALWAYS);
    list.setMinHeight(90);
    list.prefHeightProperty().bind(heightProperty().multiply(0.36));
    getChildren().addAll(head(), list, tools(), editor);
    steps.plan().addListener((o, was, now) -> draw());
    steps.chosen().addListener(o -> mark());
    draw();
  }

  private HBox head() {
    Label title = Texts.label("Steps in order", "hint");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    MenuButton add = new MenuButton("Add step");
    add.setId("add-step");
    add.setMinWidth(USE_PREF_SIZE);
    for (Kind kind : Kind.values()) {
      MenuItem item = new MenuItem(kind.label());
      item.setOnAction(e -> steps.add(kind));
      add.getItems().add(item);
    }
    HBox head = new HBox(title, gap, add);
    head.setAlignment(Pos.CENTER_LEFT);
    head.getStyleClass().add("pane-head");
    return head;
  }

  private HBox tools() {
    Button up = button("Earlier", "Move this step earlier (Alt+Up)", () -> steps.move(-1));
    Button down = button("Later", "Move this step later (Alt+Down)", () -> steps.move(1));
    Button remove = button("Remove", "Take this step out of the plan (Delete)", steps::remove);
    up.setId("step-earlier");
    down.setId("step-later");
    remove.setId("step-remove");
    HBox tools = new HBox(6, up, down, remove);
    tools.getStyleClass().add("step-tools");
    return tools;
  }

  private static Button button(String words, String tip, Runnable action) {
    Button button = new Button(words);
    button.setTooltip(new Tooltip(tip));
    button.setOnAction(e -> action.run());
    return button;
  }

  private void draw() {
    List<Operation> all = steps.plan().get().operations();
    if (all.size() != drawn.size() || all.isEmpty()) {
      rows.getChildren().clear();
      rowNodes.clear();
    }
    for (int i = 0; i < all.size(); i++) {
      if (i == rowNodes.size()) {
        rowNodes.add(row(i, all.get(i)));
        rows.getChildren().add(rowNodes.get(i));
      } else if (!all.get(i).equals(drawn.get(i)) && !turned(i, drawn.get(i), all.get(i))) {
        rowNodes.set(i, row(i, all.get(i)));
        rows.getChildren().set(i, rowNodes.get(i));
      }
    }
    drawn = all;
    if (all.isEmpty()) {
      rows.getChildren()
          .add(Texts.paragraph("No step yet. Add one to see what it does to the ear.", "hint"));
    }
    mark();
  }

  /** Changes a row in place where only a dose was turned, as happens many times a second. */
  private boolean turned(int i, Operation was, Operation now) {
    boolean alike =
        was.name().equals(now.name())
            && was.enabled() == now.enabled()
            && was.findings("").isEmpty()
            && now.findings("").isEmpty();
    if (alike && rowNodes.get(i).lookup(".step-kind") instanceof Label kind) {
      kind.setText(summary(now));
      rowNodes.get(i).setAccessibleText(said(i, now));
      return true;
    }
    return false;
  }

  private static String said(int i, Operation operation) {
    return "Step " + (i + 1) + ", " + operation.name() + ", " + summary(operation);
  }

  private HBox row(int i, Operation operation) {
    CheckBox done = new CheckBox();
    done.setId("do-step-" + (i + 1));
    done.setSelected(operation.enabled());
    done.setTooltip(new Tooltip("Do this step, or leave it out"));
    done.setAccessibleText("Do " + operation.name());
    done.setOnAction(e -> steps.enable(i, done.isSelected()));
    Label number = Texts.label(Integer.toString(i + 1), "step-number");
    Label name = Texts.label(operation.name(), "step-name");
    Label kind = Texts.label(summary(operation), "step-kind");
    kind.setWrapText(true);
    VBox words = new VBox(name, kind);
    words.setMinWidth(0);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox row = new HBox(8, number, words, done);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("step-row");
    if (!operation.enabled()) {
      row.getStyleClass().add("left-out");
    }
    warn(i, row);
    row.setAccessibleText(said(i, operation));
    row.setOnMousePressed(e -> choose(i, row));
    row.focusedProperty().addListener((o, was, now) -> focus(i, now));
    row.setOnKeyPressed(e -> key(e.getCode(), e.isAltDown(), i));
    drag(i, row);
    return row;
  }

  private void warn(int i, HBox row) {
    List<String> findings = steps.findings(i);
    if (!findings.isEmpty()) {
      Label mark = Texts.label("!", "step-warning");
      mark.setTooltip(new Tooltip(String.join("\n", findings)));
      row.getChildren().add(2, mark);
    }
  }

  private void focus(int i, boolean now) {
    if (now && steps.chosen().get() != i) {
      steps.chosen().set(i);
    }
  }

  private void choose(int i, Node row) {
    steps.chosen().set(i);
    row.requestFocus();
  }

  private void key(KeyCode code, boolean alt, int i) {
    switch (code) {
      case DELETE, BACK_SPACE -> steps.remove();
      case SPACE -> steps.enable(i, !steps.plan().get().operations().get(i).enabled());
      case UP -> go(alt, i, -1);
      case DOWN -> go(alt, i, 1);
      default -> {}
    }
  }

  private void go(boolean alt, int i, int by) {
    if (alt) {
      steps.move(by);
    }
    int to = i + by;
    if (to >= 0 && to < rowNodes.size()) {
      rowNodes.get(to).requestFocus();
    }
  }

  /** A row that is pulled onto another takes its place. */
  private void drag(int i, HBox row) {
    row.setOnDragDetected(e -> row.startFullDrag());
    row.setOnMouseDragReleased(
        e -> {
          if (steps.chosen().get() != i) {
            steps.moveTo(i);
          }
        });
  }

  /**
   * Marks the step that is worked on. The tabulator stops at its row alone and goes on to its
   * doses; the arrow keys go from row to row.
   */
  private void mark() {
    for (int i = 0; i < rowNodes.size(); i++) {
      boolean chosen = i == steps.chosen().get();
      rowNodes.get(i).setFocusTraversable(chosen);
      rowNodes.get(i).getStyleClass().removeAll("chosen");
      if (chosen) {
        rowNodes.get(i).getStyleClass().add("chosen");
      }
    }
  }

  /** Kind, and the dose that matters most. */
  static String summary(Operation operation) {
    var doses = operation.doses();
    var main =
        doses.stream()
            .filter(
                d ->
                    List.of("gap_mm", "tension_n", "depth_fraction", "width_mm", "length_mm")
                        .contains(d.key()))
            .findFirst();
    return operation.words() + main.map(d -> " · " + shortly(d)).orElse("");
  }

  private static String shortly(Dose dose) {
    String value = DosePane.value(dose.value(), dose.step());
    return dose.key().equals("depth_fraction") ? "depth " + value : value + " " + dose.unit();
  }
}
