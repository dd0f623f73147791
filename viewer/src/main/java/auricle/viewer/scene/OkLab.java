package auricle.viewer.scene;

import javafx.scene.paint.Color;

/**
 * A colour in the OKLab space (B. Ottosson 2020, "A perceptual color space for image processing"),
 * where equal steps look equal.
 *
 * @param l lightness, 0 black to 1 white
 * @param a green to red
 * @param b blue to yellow
 */
record OkLab(double l, double a, double b) {
  /** From sRGB as 0xRRGGBB. */
  static OkLab of(int rgb) {
    double r = linear((rgb >> 16 & 0xff) / 255.0);
    double g = linear((rgb >> 8 & 0xff) / 255.0);
    double b = linear((rgb & 0xff) / 255.0);
    double l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
    double m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
    double s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
    return new OkLab(
        0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
        1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
        0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
  }

  /** A colour on the way to another. */
  OkLab towards(OkLab other, double share) {
    return new OkLab(
        l + share * (other.l - l), a + share * (other.a - a), b + share * (other.b - b));
  }

  /** As a colour of the screen. */
  Color colour() {
    double x = cube(l + 0.3963377774 * a + 0.2158037573 * b);
    double y = cube(l - 0.1055613458 * a - 0.0638541728 * b);
    double z = cube(l - 0.0894841775 * a - 1.2914855480 * b);
    return Color.color(
        gamma(4.0767416621 * x - 3.3077115913 * y + 0.2309699292 * z),
        gamma(-1.2684380046 * x + 2.6097574011 * y - 0.3413193965 * z),
        gamma(-0.0041960863 * x - 0.7034186147 * y + 1.7076147010 * z));
  }

  private static double cube(double v) {
    return v * v * v;
  }

  private static double linear(double c) {
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double gamma(double c) {
    double v = c <= 0.0031308 ? 12.92 * c : 1.055 * Math.pow(c, 1 / 2.4) - 0.055;
    return Math.max(0, Math.min(1, v));
  }
}
