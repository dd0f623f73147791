package auricle.viewer.view;

import java.util.List;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Two choices beside each other, one of which holds. */
final class EitherOr extends HBox {
  /**
   * @param first whether the first one holds
   * @param toOne does what the first one says, if it does not hold
   * @param toOther does what the second one says, if it does not hold
   */
  EitherOr(String one, String other, boolean first, Runnable toOne, Runnable toOther) {
    ToggleButton left = button(one, first, toOne);
    ToggleButton right = button(other, !first, toOther);
    left.getStyleClass().add("pair-left");
    right.getStyleClass().add("pair-right");
    new ToggleGroup().getToggles().addAll(List.of(left, right));
    getChildren().addAll(left, right);
  }

  private static ToggleButton button(String words, boolean holds, Runnable action) {
    ToggleButton button = new ToggleButton(words);
    button.setSelected(holds);
    button.setMaxWidth(Double.MAX_VALUE);
    setHgrow(button, Priority.ALWAYS);
    button.setOnAction(
        e -> {
          button.setSelected(true);
          if (!holds) {
            action.run();
          }
        });
    return button;
  }
}
