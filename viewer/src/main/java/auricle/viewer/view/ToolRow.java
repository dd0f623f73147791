package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Paint;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** Above the ear: undo, the clinical views, what the colours say, what is drawn. */
final class ToolRow extends FlowPane {
  ToolRow(Models models, Workbench bench) {
    getStyleClass().add("tool-row");
    setHgap(8);
    setVgap(4);
    setMinWidth(0);
    Button undo = button("Undo", "Undo the last change (Ctrl+Z)", models.desk()::undo);
    undo.setId("undo");
    undo.disableProperty().bind(models.desk().canUndo().not());
    Button redo = button("Redo", "Do it again (Ctrl+Y)", models.desk()::redo);
    redo.setId("redo");
    redo.disableProperty().bind(models.desk().canRedo().not());
    FlowPane views = new FlowPane();
    views.prefWrapLengthProperty().bind(widthProperty().subtract(24));
    for (ClinicalView view : ClinicalView.values()) {
      Button b =
          button(
              view.label(),
              view.label() + " view (key " + view.digit() + ")",
              () -> bench.view(view));
      b.setId("view-" + view.digit());
      b.getStyleClass().add("view-button");
      views.getChildren().add(b);
    }
    HBox back = new HBox(4, undo, redo);
    back.setMinWidth(USE_PREF_SIZE);
    getChildren().addAll(back, colours(models.showing()), layers(models.showing()), views);
  }

  private static Button button(String words, String tip, Runnable action) {
    Button button = new Button(words);
    button.setTooltip(new Tooltip(tip));
    button.setOnAction(e -> action.run());
    return button;
  }

  private static ComboBox<Paint> colours(Showing showing) {
    ComboBox<Paint> box = new ComboBox<>();
    box.getItems().addAll(Paint.values());
    box.valueProperty().bindBidirectional(showing.paint());
    box.setId("colours");
    box.setAccessibleText("What the colours of the ear say");
    box.setTooltip(new Tooltip("What the colours of the ear say"));
    return box;
  }

  private static MenuButton layers(Showing showing) {
    MenuButton menu = new MenuButton("Drawn");
    menu.setTooltip(new Tooltip("What is drawn with the ear"));
    menu.setId("layers");
    record Layer(String words, BooleanProperty on) {}
    for (Layer layer :
        List.of(
            new Layer("Ear before, as a ghost", showing.ghost()),
            new Layer("Target of the rim", showing.target()),
            new Layer("Threads", showing.threads()),
            new Layer("Fold line and places of the steps", showing.marks()),
            new Layer("Head", showing.head()))) {
      CheckMenuItem item = new CheckMenuItem(layer.words());
      item.selectedProperty().bindBidirectional(layer.on());
      menu.getItems().add(item);
    }
    return menu;
  }
}
