package auricle.viewer.scene;

import java.util.List;
import javafx.scene.PointLight;
import javafx.scene.paint.Color;

/**
 * A lamp that stands still in the scene. What stands still under it too may be given its light as a
 * colour of its own, which is drawn sooner than a lamp is reckoned with at every pixel.
 *
 * @param x to the right, mm
 * @param y downwards, mm
 * @param z away from the eye that looks from the front, mm
 * @param strength share of white light, 0 … 1
 */
record Lamp(double x, double y, double z, double strength) {
  /** As the toolkit has it. */
  PointLight light() {
    PointLight light = new PointLight(Color.gray(strength));
    light.setTranslateX(x);
    light.setTranslateY(y);
    light.setTranslateZ(z);
    return light;
  }

  /** Together at most so bright. */
  static double strength(List<Lamp> lamps) {
    return lamps.stream().mapToDouble(Lamp::strength).sum();
  }

  /**
   * Share of white light that a place reflects of some lamps (Lambert's law, as the toolkit has
   * it).
   *
   * @param points in the scene, mm, three numbers each
   * @param normals of length 1
   * @param at where the three numbers of the place begin
   */
  static double on(List<Lamp> lamps, float[] points, float[] normals, int at) {
    double sum = 0;
    for (Lamp lamp : lamps) {
      sum += lamp.on(points, normals, at);
    }
    return sum;
  }

  private double on(float[] p, float[] n, int at) {
    double dx = x - p[at];
    double dy = y - p[at + 1];
    double dz = z - p[at + 2];
    double towards = dx * n[at] + dy * n[at + 1] + dz * n[at + 2];
    return strength * Math.max(0, towards) / Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
}
