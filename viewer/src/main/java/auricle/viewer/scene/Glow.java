package auricle.viewer.scene;

import java.util.function.DoubleFunction;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/**
 * A picture of colours from left to right, each from black above to as bright as it can be.
 * Pictures are repeated where they end, and drawn coarser where much of them falls on a pixel: so
 * there are few rows, and as many of the same above and below as let the ends not run into each
 * other.
 */
final class Glow {
  private static final int WIDTH = 64;
  private static final int RISING = 8;
  private static final int SAME = 4;
  private static final int HEIGHT = SAME + RISING + SAME;

  private Glow() {}

  /**
   * The picture.
   *
   * @param colour by a number from 0 to 1
   * @param brightest share of the colour that the lowest row has
   */
  static WritableImage of(DoubleFunction<Color> colour, double brightest) {
    int[] pixels = new int[WIDTH * HEIGHT];
    for (int i = 0; i < WIDTH; i++) {
      Color full = colour.apply(i / (WIDTH - 1.0));
      for (int j = 0; j < HEIGHT; j++) {
        double share = (j - SAME) / (RISING - 1.0);
        pixels[j * WIDTH + i] = pixel(full, brightest * Math.max(0, Math.min(1, share)));
      }
    }
    WritableImage image = new WritableImage(WIDTH, HEIGHT);
    image
        .getPixelWriter()
        .setPixels(0, 0, WIDTH, HEIGHT, PixelFormat.getIntArgbInstance(), pixels, 0, WIDTH);
    return image;
  }

  /** Place of a brightness in the picture, from above; 1 is the brightest. */
  static float row(double brightness) {
    double row = SAME + Math.max(0, Math.min(1, brightness)) * (RISING - 1);
    return (float) ((row + 0.5) / HEIGHT);
  }

  private static int pixel(Color full, double share) {
    return 0xff000000
        | channel(share * full.getRed()) << 16
        | channel(share * full.getGreen()) << 8
        | channel(share * full.getBlue());
  }

  private static int channel(double share) {
    return (int) Math.round(255 * Math.min(1, share));
  }
}
