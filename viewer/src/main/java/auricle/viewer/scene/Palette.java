package auricle.viewer.scene;

import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;

/**
 * Colours along a number from 0 to 1. They are mixed in a space of even perception (Ottosson 2020,
 * OKLab), with lightness rising steadily, so that they can be told apart with any colour vision and
 * in grey.
 */
@SuppressWarnings("ImmutableEnumChecker") // the colours are not handed out
public enum Palette {
  /** Skin: hollows at 0, ridges at 1. */
  SKIN(0x7a3f34, 0xb97460, 0xdba68c, 0xeec4a9, 0xf6d7c1),
  /** Amounts from nothing upwards. */
  AMOUNT(0x0b1a4a, 0x1f4f8f, 0x4f7f8a, 0xa6a04f, 0xf4e04d),
  /** Changes either way: 0.5 is none. */
  CHANGE(0x12437f, 0x6f9fcb, 0xe9e6e0, 0xd98f4e, 0x7a2f06),
  /** Kinds, told apart by hue and lightness. */
  KINDS(
      0x33406b, 0x7f6a9d, 0xc58fae, 0xe9c7b0, 0x8fb3a2, 0x4d8493, 0xd9b45f, 0xa8683f, 0x5d7d4a,
      0xb9c77d, 0x6b5145, 0xcfd6df, 0x8d2f4d, 0xe0603a, 0x6fb7e0);

  /** Width of the picture that holds a palette. */
  public static final int WIDTH = 256;

  private final int[] stops;

  Palette(int... stops) {
    this.stops = stops;
  }

  /** Colour of a number; below 0 and above 1 the end colours. */
  public Color colour(double value) {
    double place = Math.max(0, Math.min(1, value)) * (stops.length - 1);
    int low = Math.min((int) place, stops.length - 2);
    if (this == KINDS) {
      return OkLab.of(stops[(int) Math.round(place)]).colour();
    }
    return OkLab.of(stops[low]).towards(OkLab.of(stops[low + 1]), place - low).colour();
  }

  /** Number of the kinds' colours. */
  public static int kinds() {
    return KINDS.stops.length;
  }

  /** All colours from left to right, four texels high. */
  public WritableImage picture() {
    int height = 4;
    int[] pixels = new int[WIDTH * height];
    for (int i = 0; i < pixels.length; i++) {
      Color c = colour((i % WIDTH) / (WIDTH - 1.0));
      pixels[i] =
          0xff000000
              | channel(c.getRed()) << 16
              | channel(c.getGreen()) << 8
              | channel(c.getBlue());
    }
    WritableImage image = new WritableImage(WIDTH, height);
    image
        .getPixelWriter()
        .setPixels(0, 0, WIDTH, height, PixelFormat.getIntArgbInstance(), pixels, 0, WIDTH);
    return image;
  }

  private static int channel(double share) {
    return (int) Math.round(255 * share);
  }
}
