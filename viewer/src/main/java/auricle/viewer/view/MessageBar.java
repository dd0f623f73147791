package auricle.viewer.view;

import auricle.viewer.viewmodel.Files;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What went wrong with a file, in sentences, above what it is about; closed when read. */
final class MessageBar extends HBox {
  private static final int MOST = 6;

  private final Files files;
  private final VBox lines = new VBox(2);

  MessageBar(Files files) {
    this.files = files;
    setId("messages");
    getStyleClass().add("message-bar");
    setAlignment(Pos.CENTER_LEFT);
    Button close = new Button("Close");
    close.setOnAction(e -> files.messages().clear());
    HBox.setHgrow(lines, Priority.ALWAYS);
    getChildren().addAll(lines, close);
    files.messages().addListener((ListChangeListener<String>) c -> draw());
    draw();
  }

  private void draw() {
    lines.getChildren().clear();
    files.messages().stream().limit(MOST).forEach(m -> lines.getChildren().add(Texts.paragraph(m)));
    int more = files.messages().size() - MOST;
    if (more > 0) {
      lines.getChildren().add(Texts.label("… and " + more + " more."));
    }
    setVisible(!files.messages().isEmpty());
    setManaged(isVisible());
  }
}
