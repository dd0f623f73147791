package auricle.viewer.app;

import javafx.application.Application;

/** Starts {@link GuidePictures} with the switches of the program. */
public final class GuidePicturesMain {
  private GuidePicturesMain() {}

  /** The arguments of {@link GuidePictures}. */
  public static void main(String[] arguments) {
    DrawingSwitches.set();
    Application.launch(GuidePictures.class, arguments);
  }
}
