package auricle.viewer.app;

import auricle.viewer.scene.EarScene;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The viewer's life: puts its parts together, opens the window. */
public final class ViewerApp extends Application {
  @Override
  public void start(Stage stage) {
    EarScene scene = new EarScene();
    StackPane root = new StackPane(scene.picture());
    scene.picture().widthProperty().bind(root.widthProperty());
    scene.picture().heightProperty().bind(root.heightProperty());
    stage.setScene(new Scene(root, 1280, 800));
    stage.setTitle("auricle");
    stage.show();
  }
}
