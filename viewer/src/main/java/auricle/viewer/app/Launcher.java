package auricle.viewer.app;

import javafx.application.Application;

/**
 * Starts the viewer. A plain class, because JavaFX refuses to start its own from the class path,
 * and because the switches for drawing have to be set before.
 */
public final class Launcher {
  private Launcher() {}

  /** Starts the viewer; the first argument, if any, is a scenario file. */
  public static void main(String[] arguments) {
    DrawingSwitches.set();
    Beginning.ofProgram();
    Application.launch(ViewerApp.class, arguments);
  }
}
