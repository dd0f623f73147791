package auricle.viewer.view;

import auricle.viewer.viewmodel.Kind;
import auricle.viewer.viewmodel.PlanSteps;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The steps of the plan in order, what changes their order, and the step that is worked on. */
final class PlanPane extends VBox {
  private final PlanSteps steps;

  PlanPane(PlanSteps steps) {
    this.steps = steps;
    getStyleClass().add("plan-pane");
    setId("plan");
    ScrollPane list = Scrolled.over(new StepList(steps));
    list.setHbarPolicy(ScrollPane.ScrollBarPolicy.AS_NEEDED);
    list.getStyleClass().add("step-list");
    list.setMinHeight(90);
    list.prefHeightProperty().bind(heightProperty().multiply(0.36));
    ScrollPane editor = Scrolled.over(new DosePane(steps));
    VBox.setVgrow(editor, Priority.ALWAYS);
    getChildren().addAll(head(), list, tools(), editor);
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
}
