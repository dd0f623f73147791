package auricle.viewer.app;

import javafx.application.Application;

/**
 * Starts the viewer. A plain class, because JavaFX refuses to start its own from the class path,
 * and because the switch for drawing 3D without a graphics card has to be set before.
 */
public final class Launcher {
  private Launcher() {}

  /** Starts the viewer; the first argument, if any, is a scenario file. */
  public static void main(String[] arguments) {
    if (System.getProperty("prism.forceGPU") == null) {
      System.setProperty("prism.forceGPU", "true");
    }
    Beginning.ofProgram();
    Application.launch(ViewerApp.class, arguments);
  }
}
