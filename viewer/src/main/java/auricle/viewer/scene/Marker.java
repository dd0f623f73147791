package auricle.viewer.scene;

import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.Sphere;

/** A small ball on the ear: a bite, or a place that is pointed out. */
public final class Marker {
  private final Sphere ball;

  /** A ball of a colour and radius (mm). */
  public Marker(Color colour, double radius_mm) {
    ball = new Sphere(radius_mm, 16);
    colour(colour);
  }

  /** What is put into the scene. */
  public Sphere node() {
    return ball;
  }

  /** Changes the colour. */
  public void colour(Color colour) {
    PhongMaterial material = new PhongMaterial(colour);
    material.setSpecularColor(Color.gray(0.5));
    ball.setMaterial(material);
  }

  /** Moves to a place of the ear. */
  public void at(Spot spot, boolean mirrored) {
    ball.setTranslateX(mirrored ? -spot.y_mm() : spot.y_mm());
    ball.setTranslateY(-spot.z_mm());
    ball.setTranslateZ(-spot.x_mm());
  }
}
