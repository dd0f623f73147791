package auricle.viewer.view;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import auricle.viewer.app.NeedsDisplay;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A word that changes in a pane that scrolls must not have all of the pane drawn anew. */
@ExtendWith({NeedsDisplay.class, ApplicationExtension.class})
@SuppressWarnings("NullAway.Init") // the pane is made when the toolkit has started
class ScrolledTest {
  private ScrollPane pane;

  @Start
  void start(Stage stage) {
    pane = Scrolled.over(new Label("what is scrolled"));
    stage.setScene(new Scene(pane, 200, 100));
    stage.show();
  }

  @Test
  void noPictureOfItsContentIsKept() {
    Node viewport = pane.lookup(".viewport");
    assertNotNull(viewport, "the part of a scroll pane that keeps a picture");
    assertFalse(viewport.isCache());
  }
}
