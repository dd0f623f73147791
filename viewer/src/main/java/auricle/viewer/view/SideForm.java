package auricle.viewer.view;

import auricle.anatomy.Side;
import auricle.viewer.viewmodel.EarSheet;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Which ear of the person it is, and whether the other one is in the scenario too. */
final class SideForm extends VBox {
  private final EarSheet sheet;
  private final Map<Side, RadioButton> sides = new EnumMap<>(Side.class);
  private final Button other = new Button();

  SideForm(EarSheet sheet) {
    super(6);
    this.sheet = sheet;
    ToggleGroup group = new ToggleGroup();
    HBox row = new HBox(12);
    for (Side side : Side.values()) {
      RadioButton button = new RadioButton(Texts.upper(name(side)) + " ear");
      button.setId("side-" + name(side));
      button.setToggleGroup(group);
      button.setOnAction(e -> sheet.side(side));
      sides.put(side, button);
      row.getChildren().add(button);
    }
    other.setId("other-ear");
    other.setOnAction(e -> change());
    getChildren().addAll(row, other);
  }

  private static String name(Side side) {
    return side == Side.RIGHT ? "right" : "left";
  }

  private void change() {
    if (sheet.pair()) {
      sheet.removeShown();
    } else {
      sheet.addOther();
    }
  }

  /** Shows the ear as it stands. */
  void fill() {
    sides.forEach((side, button) -> button.setSelected(side == sheet.side()));
    String mine = name(sheet.side());
    String theirs = name(sheet.side() == Side.RIGHT ? Side.LEFT : Side.RIGHT);
    other.setText(
        sheet.pair()
            ? "Take the " + mine + " ear out"
            : "Add the " + theirs + " ear, a mirror image");
  }
}
