package auricle.viewer.view;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Panes that scroll up and down over what is as wide as they are. */
final class Scrolled {
  private Scrolled() {}

  /**
   * A pane over something. JavaFX (21) keeps a picture of all that such a pane shows and draws the
   * whole of it anew when a word changes in it, which costs more than it saves where little is
   * scrolled and much changes; here only what has changed is drawn.
   */
  static ScrollPane over(Node content) {
    ScrollPane pane = new ScrollPane(content);
    pane.setFitToWidth(true);
    pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    pane.skinProperty().addListener((o, was, now) -> keepNoPicture(pane));
    return pane;
  }

  private static void keepNoPicture(ScrollPane pane) {
    Node viewport = pane.lookup(".viewport");
    if (viewport != null) {
      viewport.setCache(false);
    }
  }
}
