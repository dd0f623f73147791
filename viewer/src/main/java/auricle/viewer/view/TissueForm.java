package auricle.viewer.view;

import auricle.material.MaterialRow;
import auricle.material.MaterialTables;
import auricle.plan.PressTest;
import auricle.viewer.viewmodel.EarSheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/**
 * Stiffness of the cartilage: a row of the tables, a number of one's own, a press at the bedside.
 */
final class TissueForm extends VBox {
  private static final String MODULUS = "cartilage.modulus_mpa";
  private static final PressTest USUAL = new PressTest(50, 5, 0.1);

  private final EarSheet sheet;
  private final List<MaterialRow> variants = MaterialTables.shipped().variants(MODULUS);
  private final ComboBox<MaterialRow> choice = new ComboBox<>();
  private final Label source = Texts.paragraph("", "hint");
  private final FieldRow number;
  private final CheckBox pressed = new CheckBox("A press at the bedside sets the stiffness");
  private final PressRows press;
  private boolean filling;

  TissueForm(EarSheet sheet) {
    this.sheet = sheet;
    pressed.setWrapText(true);
    getStyleClass().add("form");
    choice.setId("modulus-row");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setAccessibleText("Row of the tables for the modulus of cartilage");
    choice.getItems().setAll(variants);
    choice.setButtonCell(cell());
    choice.setCellFactory(list -> cell());
    choice.valueProperty().addListener((o, was, now) -> chosen(now));
    number =
        new FieldRow(
            MODULUS,
            "Modulus of cartilage",
            "MPa",
            0.1,
            v -> sheet.number(MODULUS, v),
            sheet::endTurn);
    pressed.setId("press");
    pressed.setOnAction(
        e -> sheet.press(pressed.isSelected() ? Optional.of(USUAL) : Optional.empty()));
    press = new PressRows(sheet);
    getChildren()
        .addAll(Texts.label("Cartilage by", "field-label"), choice, source, number, pressed, press);
  }

  private static ListCell<MaterialRow> cell() {
    return new ListCell<>() {
      @Override
      protected void updateItem(MaterialRow row, boolean empty) {
        super.updateItem(row, empty);
        setText(empty || row == null ? "" : words(row));
      }
    };
  }

  private static String words(MaterialRow row) {
    String name = row.variant().isEmpty() ? "usual" : row.variant().replace('_', ' ');
    return String.format(Locale.ROOT, "%s: %.2f MPa", name, row.value());
  }

  private void chosen(MaterialRow row) {
    if (!filling && row != null) {
      sheet.row(MODULUS, row.variant());
    }
  }

  /** Shows the tissue as it stands. */
  void fill() {
    filling = true;
    var tissue = sheet.ear().tissue();
    String variant = tissue.rows().getOrDefault(MODULUS, "");
    variants.stream().filter(r -> r.variant().equals(variant)).findFirst().ifPresent(this::show);
    Optional<PressTest> made = tissue.press();
    pressed.setSelected(made.isPresent());
    press.setVisible(made.isPresent());
    press.setManaged(made.isPresent());
    made.ifPresent(press::fill);
    filling = false;
  }

  private void show(MaterialRow row) {
    choice.setValue(row);
    double own = sheet.ear().tissue().overrides().getOrDefault(MODULUS, row.value());
    number.fill(own, sheet.findings(MODULUS));
    boolean given = sheet.ear().tissue().overrides().containsKey(MODULUS);
    source.setText(
        given
            ? "A number given here takes the place of the tables'; choose a row to go back to it."
            : Texts.upper(row.source())
                + " ("
                + row.confidence().name().toLowerCase(Locale.ROOT)
                + ").");
  }
}
