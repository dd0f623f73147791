package auricle.viewer.scene;

import javafx.scene.PerspectiveCamera;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;

/** The camera, placed by an {@link Orbit} around a point of the ear. */
final class Eye {
  private static final double FIELD_DEG = 22;

  private final PerspectiveCamera camera = new PerspectiveCamera(true);
  private final Translate focus = new Translate();
  private final Rotate around = new Rotate(0, Rotate.Y_AXIS);
  private final Rotate up = new Rotate(0, Rotate.X_AXIS);
  private final Translate back = new Translate();
  private Orbit orbit = Orbit.at(ClinicalView.SIDE);
  private Spot middle = new Spot(8, -4, 4);

  Eye() {
    camera.setFieldOfView(FIELD_DEG);
    camera.setNearClip(5);
    camera.setFarClip(3000);
    camera.getTransforms().setAll(focus, around, up, back);
  }

  PerspectiveCamera camera() {
    return camera;
  }

  Orbit orbit() {
    return orbit;
  }

  /** The point that is looked at and turned around. */
  void middle(Spot spot) {
    middle = spot;
  }

  /** Places the camera; a left ear is seen in the mirror, so that front stays front. */
  void look(Orbit from, boolean mirrored) {
    orbit = from;
    focus.setX(mirrored ? -middle.y_mm() : middle.y_mm());
    focus.setY(-middle.z_mm());
    focus.setZ(-middle.x_mm());
    around.setAngle(mirrored ? from.around_deg() : -from.around_deg());
    up.setAngle(-from.up_deg());
    back.setX(-from.right_mm());
    back.setY(-from.down_mm());
    back.setZ(-from.distance_mm());
  }

  /** Millimetres of the ear that one pixel covers at the point looked at. */
  double perPixel_mm(double height_px) {
    return 2
        * orbit.distance_mm()
        * Math.tan(Math.toRadians(FIELD_DEG / 2))
        / Math.max(1, height_px);
  }
}
