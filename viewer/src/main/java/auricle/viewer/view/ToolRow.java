package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.Paint;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/**
 * Above the ear: undo, the clinical views, what the colours say, what is drawn. Where there is
 * little width the views are in a menu, and undo in the window's menu alone.
 */
final class ToolRow extends FlowPane {
  private final HBox back;
  private final Node colours;
  private final Node layers;
  private final FlowPane views = new FlowPane();
  private final MenuButton viewMenu = new MenuButton("View");

  ToolRow(Models models, Workbench bench) {
    getStyleClass().add("tool-row");
    setHgap(8);
    setVgap(4);
    setMinWidth(0);
    back = undo(models);
    colours = colours(models.showing());
    layers = layers(models.showing());
    viewMenu.setId("views");
    viewMenu.setTooltip(new Tooltip("Where the ear is seen from (keys 1 to 6)"));
    views.prefWrapLengthProperty().bind(widthProperty().subtract(24));
    for (ClinicalView view : ClinicalView.values()) {
      views.getChildren().add(button(view, bench));
      MenuItem item = new MenuItem(view.label());
      item.setOnAction(e -> bench.view(view));
      viewMenu.getItems().add(item);
    }
    narrow(false);
  }

  private static HBox undo(Models models) {
    Button undo = button("Undo", "Undo the last change (Ctrl+Z)", models.desk()::undo);
    undo.setId("undo");
    undo.disableProperty().bind(models.desk().canUndo().not());
    Button redo = button("Redo", "Do it again (Ctrl+Y)", models.desk()::redo);
    redo.setId("redo");
    redo.disableProperty().bind(models.desk().canRedo().not());
    HBox back = new HBox(4, undo, redo);
    back.setMinWidth(USE_PREF_SIZE);
    return back;
  }

  private static Button button(ClinicalView view, Workbench bench) {
    String tip = view.label() + " view (key " + view.digit() + ")";
    Button button = button(view.label(), tip, () -> bench.view(view));
    button.setId("view-" + view.digit());
    button.getStyleClass().add("view-button");
    return button;
  }

  /** Whether there is little width. */
  void narrow(boolean now) {
    getStyleClass().remove("narrow");
    if (now) {
      getStyleClass().add("narrow");
      getChildren().setAll(colours, layers, viewMenu);
    } else {
      getChildren().setAll(back, colours, layers, views);
    }
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
