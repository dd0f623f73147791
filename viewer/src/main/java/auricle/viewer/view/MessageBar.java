package auricle.viewer.view;

import auricle.viewer.viewmodel.Files;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * What went wrong with a file, in sentences, above what it is about; closed when read. Many are
 * scrolled, so that the ear stays in sight.
 */
final class MessageBar extends HBox {
  private final Files files;
  private final VBox lines = new VBox(2);

  MessageBar(Files files) {
    this.files = files;
    setId("messages");
    getStyleClass().add("message-bar");
    setAlignment(Pos.CENTER_LEFT);
    Button close = new Button("Close");
    close.setOnAction(e -> files.messages().clear());
    close.setMinWidth(USE_PREF_SIZE);
    ScrollPane scroll = Scrolled.over(lines);
    scroll.getStyleClass().add("message-lines");
    scroll.setFocusTraversable(true);
    scroll.setAccessibleText("What went wrong");
    scroll.prefViewportHeightProperty().bind(lines.heightProperty());
    HBox.setHgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(scroll, close);
    files.messages().addListener((ListChangeListener<String>) c -> draw());
    draw();
  }

  private void draw() {
    lines.getChildren().setAll(files.messages().stream().map(m -> Texts.paragraph(m)).toList());
    setVisible(!files.messages().isEmpty());
    setManaged(isVisible());
  }
}
