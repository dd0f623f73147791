package auricle.viewer.app;

import javafx.application.Application;

/** Starts {@link ScreenTour} with the switches of the program. */
public final class ScreenTourMain {
  private ScreenTourMain() {}

  /** The arguments of {@link ScreenTour}. */
  public static void main(String[] arguments) {
    DrawingSwitches.set();
    Application.launch(ScreenTour.class, arguments);
  }
}
