package auricle.viewer.view;

import java.util.List;
import java.util.function.DoubleConsumer;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.SpinnerValueFactory.DoubleSpinnerValueFactory;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * A number with its name, its unit and what is wrong with it. Any number can be typed: what cannot
 * be is said below, not silently changed.
 */
final class FieldRow extends VBox {
  private static final double FAR = 1e5;

  private final Spinner<Double> field;
  private final VBox findings = new VBox(2);
  private boolean filling;

  /**
   * @param id of the field, for tests and styles
   * @param change is given each new value
   * @param end is told when the field is left
   */
  FieldRow(String id, String label, String unit, double step, DoubleConsumer change, Runnable end) {
    Label name = Texts.label(label, "field-label");
    name.setWrapText(true);
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setMaxWidth(Double.MAX_VALUE);
    field = spinner(step, change, end);
    field.setId("field-" + id);
    field.getEditor().setAccessibleText(label + ", " + unit);
    field.setTooltip(new Tooltip(label + ", " + unit));
    HBox row = new HBox(6, name, field, Texts.label(unit, "unit"));
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    findings.setId("findings-" + id);
    getChildren().addAll(row, findings);
  }

  /** A spinner that takes any number. */
  private Spinner<Double> spinner(double step, DoubleConsumer change, Runnable end) {
    var values = new DoubleSpinnerValueFactory(-FAR, FAR, 0, step);
    values.setConverter(new Decimals(step, values));
    Spinner<Double> made = new Spinner<>(values);
    made.setEditable(true);
    made.getStyleClass().add("dose-field");
    made.valueProperty().addListener((o, was, now) -> turn(now, change));
    made.focusedProperty().addListener((o, was, now) -> leave(made, now, end));
    return made;
  }

  private void turn(double now, DoubleConsumer change) {
    if (!filling) {
      change.accept(now);
    }
  }

  private static void leave(Spinner<Double> made, boolean focused, Runnable end) {
    if (!focused) {
      made.commitValue();
      end.run();
    }
  }

  /** The field itself. */
  Spinner<Double> field() {
    return field;
  }

  /** Shows a value and what is wrong with it. */
  void fill(double value, List<String> wrong) {
    filling = true;
    field.getValueFactory().setValue(value);
    filling = false;
    findings.getChildren().setAll(wrong.stream().map(w -> Texts.paragraph(w, "finding")).toList());
  }
}
