package auricle.viewer.view;

import auricle.plan.Dose;
import auricle.plan.Operation;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Level and place of the four bites of a fold suture, as a table. */
final class BiteGrid extends GridPane {
  private final Turning turning;
  private final List<DoseField> fields = new ArrayList<>();

  BiteGrid(Turning turning) {
    this.turning = turning;
    getStyleClass().add("dose-grid");
  }

  /** Whether a dose stands in this table. */
  static boolean holds(Dose dose) {
    return dose.key().startsWith("scapha_") || dose.key().startsWith("concha_");
  }

  /** Adds a dose: a level begins a row, the place from the fold follows in it. */
  void add(Dose dose) {
    if (getRowCount() == 0) {
      head();
    }
    boolean isLevel = dose.key().endsWith("_level_percent");
    int r = isLevel ? getRowCount() : getRowCount() - 1;
    if (isLevel) {
      add(name(dose), 0, r);
    }
    DoseField field = new DoseField(dose, turning);
    field.getStyleClass().add("bite-field");
    add(field, isLevel ? 1 : 2, r);
    fields.add(field);
  }

  private void head() {
    add(Texts.label("Bites", "sub-title"), 0, 0);
    add(Texts.label("level, %", "dose-label"), 1, 0);
    add(Texts.paragraph("from fold, mm", "dose-label"), 2, 0);
  }

  private static Label name(Dose dose) {
    String[] words = dose.key().split("_", 3);
    Label name = Texts.paragraph(Texts.upper(words[1] + " " + words[0]), "bite-name");
    setHgrow(name, Priority.ALWAYS);
    return name;
  }

  /** Shows the doses of an operation. */
  void show(Operation operation) {
    fields.forEach(field -> field.show(operation.dose(field.key()).value()));
  }
}
