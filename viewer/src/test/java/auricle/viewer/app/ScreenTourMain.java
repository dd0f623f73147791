package auricle.viewer.app;

import javafx.application.Application;

/** Starts {@link ScreenTour} with the switch that 3D without a graphics card needs. */
public final class ScreenTourMain {
  private ScreenTourMain() {}

  /** The arguments of {@link ScreenTour}. */
  public static void main(String[] arguments) {
    System.setProperty("prism.forceGPU", "true");
    Application.launch(ScreenTour.class, arguments);
  }
}
