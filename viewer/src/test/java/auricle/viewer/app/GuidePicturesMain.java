package auricle.viewer.app;

import javafx.application.Application;

/** Starts {@link GuidePictures} with the switch that 3D without a graphics card needs. */
public final class GuidePicturesMain {
  private GuidePicturesMain() {}

  /** The arguments of {@link GuidePictures}. */
  public static void main(String[] arguments) {
    System.setProperty("prism.forceGPU", "true");
    Application.launch(GuidePictures.class, arguments);
  }
}
