package auricle.viewer.view;

import auricle.plan.Dose;
import javafx.scene.control.Spinner;
import javafx.scene.control.SpinnerValueFactory.DoubleSpinnerValueFactory;
import javafx.scene.control.Tooltip;

/** A field that turns a dose, with its bounds and why they are there as a tip. */
final class DoseField extends Spinner<Double> {
  private final String key;

  DoseField(Dose dose, Turning turning) {
    this.key = dose.key();
    var values = new DoubleSpinnerValueFactory(dose.low(), dose.high(), dose.value(), dose.step());
    values.setConverter(new Decimals(dose.step(), values));
    setValueFactory(values);
    setEditable(true);
    setId("dose-" + dose.key());
    getStyleClass().add("dose-field");
    getEditor().setAccessibleText(dose.label() + ", " + dose.unit());
    setTooltip(new Tooltip(tip(dose)));
    focusedProperty().addListener((o, was, now) -> leave(now, turning));
    valueProperty().addListener((o, was, now) -> turning.turn(dose.key(), now));
  }

  private static String tip(Dose dose) {
    String low = Decimals.text(dose.low(), dose.step());
    String high = Decimals.text(dose.high(), dose.step());
    return Texts.upper(dose.label())
        + (": " + low + " to " + high + " " + dose.unit() + "; " + dose.reason());
  }

  private void leave(boolean focused, Turning turning) {
    if (!focused) {
      commitValue();
      turning.end();
    }
  }

  /** Key of the dose. */
  String key() {
    return key;
  }

  /** Shows a value. */
  void show(double value) {
    getValueFactory().setValue(value);
  }
}
