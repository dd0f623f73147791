package auricle.viewer.app;

import auricle.viewer.store.Folder;
import auricle.viewer.task.SimulationRehearser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;

/** The viewer's life: puts its parts together, opens the window, keeps unsaved work. */
public final class ViewerApp extends Application {
  private Optional<Window> window = Optional.empty();

  @Override
  public void start(Stage stage) {
    if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
      Label sorry =
          new Label(
              "This computer's graphics cannot draw in three dimensions, which the viewer needs.\n"
                  + "A newer graphics driver may help; the command line works without.");
      sorry.setStyle("-fx-padding: 40; -fx-font-size: 15;");
      stage.setScene(new Scene(sorry));
      stage.show();
      return;
    }
    Window opened =
        new Window(stage, Folder.ofUser(), Beginning.ofProgram(), SimulationRehearser::new);
    window = Optional.of(opened);
    opened.open(fileToOpen());
  }

  /** The file named on the command line, or by the property auricle.open. */
  private Optional<Path> fileToOpen() {
    List<String> named = getParameters().getUnnamed();
    Optional<String> property = Optional.ofNullable(System.getProperty("auricle.open"));
    return named.stream().findFirst().or(() -> property).map(Path::of).filter(Files::exists);
  }

  @Override
  public void stop() {
    window.ifPresent(Window::close);
  }
}
