package auricle.viewer.view;

import javafx.scene.layout.VBox;

/**
 * A pane at the side that is drawn only while it can be seen, a few frames after the ear, and
 * catches up when it is opened.
 */
abstract class SidePane extends VBox {
  private boolean seen;
  private boolean stale = true;
  private final Later later = new Later(this::catchUp);

  SidePane(String id) {
    setId(id);
    getStyleClass().add("side-pane");
  }

  /** Draws what is to be shown now. */
  abstract void draw();

  /** Says that what is shown has changed. */
  final void changed() {
    stale = true;
    if (seen) {
      later.ask();
    }
  }

  /** Says whether the pane can be seen. */
  final void seen(boolean now) {
    seen = now;
    seenNow(now);
    catchUp();
  }

  /** Hears whether the pane can be seen; does nothing unless a pane needs it. */
  void seenNow(boolean now) {}

  private void catchUp() {
    if (seen && stale) {
      stale = false;
      draw();
    }
  }
}
