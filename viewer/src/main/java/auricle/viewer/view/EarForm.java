package auricle.viewer.view;

import auricle.plan.EarMeasure;
import auricle.viewer.viewmodel.EarSheet;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.layout.VBox;

/** What was measured on the ear, and what it is made of. */
final class EarForm extends SidePane {
  private final EarSheet sheet;
  private final Map<EarMeasure, FieldRow> rows = new EnumMap<>(EarMeasure.class);
  private final VBox whole = new VBox(4);
  private final SideForm side;
  private final TissueForm tissue;

  EarForm(EarSheet sheet) {
    super("ear-form");
    this.sheet = sheet;
    getStyleClass().add("form");
    side = new SideForm(sheet);
    tissue = new TissueForm(sheet);
    getChildren().add(side);
    getChildren()
        .add(
            Texts.paragraph(
                "Measured before the operation. The ear is shaped anew and the plan worked out on it at every change.",
                "hint"));
    getChildren().add(whole);
    for (EarMeasure m : EarMeasure.values()) {
      var dose = m.of(sheet.ear().ear());
      FieldRow row =
          new FieldRow(
              m.key(),
              Texts.upper(dose.label()),
              dose.unit(),
              dose.step(),
              v -> sheet.measure(m, v),
              sheet::endTurn);
      rows.put(m, row);
      getChildren().add(row);
    }
    getChildren().addAll(Texts.label("Tissue", "sub-title"), tissue);
    sheet.follow(o -> changed());
  }

  @Override
  void draw() {
    rows.forEach((m, row) -> row.fill(m.value(sheet.ear().ear()), sheet.findings(m.key())));
    whole
        .getChildren()
        .setAll(sheet.findings().stream().map(w -> Texts.paragraph(w, "finding")).toList());
    side.fill();
    tissue.fill();
  }
}
