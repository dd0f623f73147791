package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Operation;
import auricle.viewer.viewmodel.PlanSteps;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * A step of the plan in the list: number, name, kind with its main dose, and whether it is done.
 */
final class StepRow extends HBox {
  private static final List<String> MAIN =
      List.of("gap_mm", "tension_n", "depth_fraction", "width_mm", "length_mm");

  private final int place;
  private final PlanSteps steps;
  private final Label kind = Texts.label("", "step-kind");
  private Operation drawn;

  StepRow(int place, Operation operation, PlanSteps steps) {
    super(8);
    this.place = place;
    this.steps = steps;
    this.drawn = operation;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("step-row");
    if (!operation.enabled()) {
      getStyleClass().add("left-out");
    }
    getChildren().addAll(Texts.label(Integer.toString(place + 1), "step-number"), words());
    warn();
    getChildren().add(done());
    say();
    setOnMousePressed(e -> choose());
    focusedProperty().addListener((o, was, now) -> focus(now));
    drag();
  }

  private VBox words() {
    kind.setWrapText(true);
    VBox words = new VBox(Texts.label(drawn.name(), "step-name"), kind);
    words.setMinWidth(0);
    setHgrow(words, Priority.ALWAYS);
    return words;
  }

  private void warn() {
    List<String> findings = steps.findings(place);
    if (!findings.isEmpty()) {
      Label mark = Texts.label("!", "step-warning");
      mark.setTooltip(new Tooltip(String.join("\n", findings)));
      getChildren().add(mark);
    }
  }

  private CheckBox done() {
    CheckBox done = new CheckBox();
    done.setId("do-step-" + (place + 1));
    done.setSelected(drawn.enabled());
    done.setTooltip(new Tooltip("Do this step, or leave it out"));
    done.setAccessibleText("Do " + drawn.name());
    done.setOnAction(e -> steps.enable(place, done.isSelected()));
    return done;
  }

  /** Shows an operation in place if only a dose was turned, as happens many times a second. */
  boolean turned(Operation now) {
    boolean alike =
        drawn.name().equals(now.name())
            && drawn.enabled() == now.enabled()
            && drawn.findings("").isEmpty()
            && now.findings("").isEmpty();
    if (alike && !now.equals(drawn)) {
      drawn = now;
      say();
    }
    return alike || now.equals(drawn);
  }

  private void say() {
    kind.setText(summary(drawn));
    setAccessibleText("Step " + (place + 1) + ", " + drawn.name() + ", " + summary(drawn));
  }

  private void choose() {
    steps.chosen().set(place);
    requestFocus();
  }

  private void focus(boolean now) {
    if (now && steps.chosen().get() != place) {
      steps.chosen().set(place);
    }
  }

  /** A row that is pulled onto another takes its place. */
  private void drag() {
    setOnDragDetected(e -> startFullDrag());
    setOnMouseDragReleased(
        e -> {
          if (steps.chosen().get() != place) {
            steps.moveTo(place);
          }
        });
  }

  /** Shows whether this is the step that is worked on; the tabulator stops at its row alone. */
  void chosen(boolean now) {
    setFocusTraversable(now);
    getStyleClass().removeAll("chosen");
    if (now) {
      getStyleClass().add("chosen");
    }
  }

  /** Kind, and the dose that matters most. */
  private static String summary(Operation operation) {
    return operation.words()
        + operation.doses().stream()
            .filter(d -> MAIN.contains(d.key()))
            .findFirst()
            .map(d -> " · " + shortly(d))
            .orElse("");
  }

  private static String shortly(Dose dose) {
    String value = Decimals.text(dose.value(), dose.step());
    return dose.key().equals("depth_fraction") ? "depth " + value : value + " " + dose.unit();
  }
}
