package auricle.viewer.view;

import auricle.plan.Operation;
import auricle.viewer.viewmodel.PlanSteps;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * The steps of the plan in order. The tabulator stops at the row of the one that is worked on and
 * goes on to its doses; the arrow keys go from row to row.
 */
final class StepList extends VBox {
  private final PlanSteps steps;
  private final List<StepRow> rows = new ArrayList<>();
  private List<Operation> drawn = List.of();

  StepList(PlanSteps steps) {
    this.steps = steps;
    getStyleClass().add("step-rows");
    steps.plan().addListener((o, was, now) -> draw());
    steps.chosen().addListener(o -> mark());
    draw();
  }

  private void draw() {
    List<Operation> all = steps.plan().get().operations();
    if (all.size() != drawn.size() || all.isEmpty()) {
      getChildren().clear();
      rows.clear();
    }
    for (int i = 0; i < all.size(); i++) {
      row(i, all.get(i));
    }
    drawn = all;
    if (all.isEmpty()) {
      getChildren()
          .add(Texts.paragraph("No step yet. Add one to see what it does to the ear.", "hint"));
    }
    mark();
  }

  private void row(int i, Operation operation) {
    if (i == rows.size()) {
      rows.add(made(i, operation));
      getChildren().add(rows.get(i));
    } else if (!operation.equals(drawn.get(i)) && !rows.get(i).turned(operation)) {
      rows.set(i, made(i, operation));
      getChildren().set(i, rows.get(i));
    }
  }

  private StepRow made(int i, Operation operation) {
    StepRow row = new StepRow(i, operation, steps);
    row.setOnKeyPressed(e -> key(e, i));
    return row;
  }

  private void key(KeyEvent e, int i) {
    switch (e.getCode()) {
      case DELETE, BACK_SPACE -> steps.remove();
      case SPACE -> steps.enable(i, !steps.plan().get().operations().get(i).enabled());
      case UP -> go(e.isAltDown(), i, -1);
      case DOWN -> go(e.isAltDown(), i, 1);
      default -> {}
    }
  }

  private void go(boolean alt, int i, int by) {
    if (alt) {
      steps.move(by);
    }
    int to = i + by;
    if (to >= 0 && to < rows.size()) {
      rows.get(to).requestFocus();
    }
  }

  private void mark() {
    for (int i = 0; i < rows.size(); i++) {
      rows.get(i).chosen(i == steps.chosen().get());
    }
  }
}
