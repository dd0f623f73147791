package auricle.viewer.app;

import auricle.viewer.view.Exports;
import auricle.viewer.viewmodel.Models;
import auricle.viewer.viewmodel.StandInRehearser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Before each test the program's window is opened on a stand-in solver, with a folder of its own,
 * as at a first start; it is closed after it.
 */
@ExtendWith({NeedsDisplay.class, ApplicationExtension.class})
@SuppressWarnings("NullAway.Init") // the window opens when the toolkit has started
abstract class OpenWindow {
  static final Path PICTURES = Path.of("target", "screens");

  private static final long LONGEST_S = 30;

  Path folder = Path.of("");
  Window window;
  Models models;

  /** TestFX itself looks for a start in the class of the test alone, not here. */
  @BeforeEach
  void open() throws IOException, TimeoutException {
    folder = OwnFolder.make();
    FxToolkit.setupStage(this::open);
  }

  private void open(Stage stage) {
    window =
        new Window(stage, folder, new Beginning(new StandInRehearser()), StandInRehearser::new);
    models = window.models();
    window.open(Optional.empty());
    stage.setWidth(1280);
    stage.setHeight(800);
    opened();
  }

  /** What a kind of test does with the window before each of its tests. */
  void opened() {}

  @AfterEach
  void close() {
    WaitForAsyncUtils.waitForFxEvents();
    window.close();
  }

  /** What a screen reader says of the state. */
  static String state(FxRobot robot) {
    return String.valueOf(robot.lookup("#state").query().getAccessibleText());
  }

  static void wait(BooleanSupplier met) throws TimeoutException {
    wait(LONGEST_S, met);
  }

  static void wait(long longest_s, BooleanSupplier met) throws TimeoutException {
    WaitForAsyncUtils.waitFor(longest_s, TimeUnit.SECONDS, met::getAsBoolean);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Keeps what is on the screen for whoever looks at it later. */
  void picture(FxRobot robot, String name) throws IOException {
    Files.createDirectories(PICTURES);
    byte[][] png = new byte[1][];
    robot.interact(
        () -> {
          try {
            png[0] = Exports.png(window.bench().getScene().snapshot(null));
          } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
    Files.write(PICTURES.resolve(name + ".png"), png[0]);
  }
}
