package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Operation;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Doses below each other, each with its name, a slider, a field and its unit. */
final class DoseGrid extends GridPane {
  private static final double SAME = 1e-9;

  private final Turning turning;
  private final List<Row> rows = new ArrayList<>();

  private record Row(Slider slider, DoseField field) {
    void show(double value) {
      if (Math.abs(slider.getValue() - value) > SAME) {
        slider.setValue(value);
      }
      field.show(value);
    }
  }

  DoseGrid(Turning turning) {
    this.turning = turning;
    getStyleClass().add("dose-grid");
  }

  /** Adds a dose below the others. */
  void add(Dose dose) {
    Node label = Texts.paragraph(Texts.upper(dose.label()), "dose-label");
    Row row = new Row(slider(dose), new DoseField(dose, turning));
    int r = getRowCount();
    setColumnSpan(label, 3);
    add(label, 0, r);
    add(row.slider(), 0, r + 1);
    add(row.field(), 1, r + 1);
    add(Texts.label(unit(dose), "unit"), 2, r + 1);
    setHgrow(row.slider(), Priority.ALWAYS);
    rows.add(row);
  }

  private Slider slider(Dose dose) {
    Slider slider = new Slider(dose.low(), sliderHigh(dose), dose.value());
    slider.setBlockIncrement(dose.step());
    slider.setAccessibleText(dose.label());
    slider.setId("slide-" + dose.key());
    slider
        .valueProperty()
        .addListener((o, was, now) -> turning.turn(dose.key(), snapped(dose, now.doubleValue())));
    slider.setOnMouseReleased(e -> turning.end());
    return slider;
  }

  /** Upper end of the slider: what is usual; the field goes as far as is allowed. */
  private static double sliderHigh(Dose dose) {
    double usual =
        switch (dose.key()) {
          case "tension_n" -> 2;
          case "gap_mm" -> 24;
          default -> dose.high();
        };
    return Math.max(dose.value(), Math.min(dose.high(), usual));
  }

  private static double snapped(Dose dose, double value) {
    return Math.round(value / dose.step()) * dose.step();
  }

  private static String unit(Dose dose) {
    return dose.unit().startsWith("of") ? "of 1" : dose.unit();
  }

  /** Shows the doses of an operation. */
  void show(Operation operation) {
    rows.forEach(row -> row.show(operation.dose(row.field().key()).value()));
  }
}
