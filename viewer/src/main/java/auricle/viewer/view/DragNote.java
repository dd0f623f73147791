package auricle.viewer.view;

import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;

/** A note beside the pointer: what is being dragged, and where it is. */
final class DragNote extends VBox {
  private final Label name = Texts.label("", "note-title");
  private final Label words = Texts.label("", "note-words");

  DragNote() {
    getStyleClass().add("drag-note");
    getChildren().addAll(name, words);
    setManaged(false);
    setMouseTransparent(true);
    setVisible(false);
  }

  void show(String title, String text, MouseEvent at) {
    name.setText(Texts.upper(title));
    words.setText(text);
    setVisible(true);
    applyCss();
    autosize();
    if (getParent() instanceof Pane parent) {
      Point2D p = parent.sceneToLocal(at.getSceneX(), at.getSceneY());
      double x = Math.min(p.getX() + 18, parent.getWidth() - getWidth() - 8);
      double y = Math.min(p.getY() + 18, parent.getHeight() - getHeight() - 8);
      relocate(Math.max(8, x), Math.max(8, y));
    }
  }

  void hide() {
    setVisible(false);
  }
}
