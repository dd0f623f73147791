package auricle.viewer.scene;

import javafx.animation.PauseTransition;
import javafx.scene.Group;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Region;
import javafx.scene.paint.Paint;
import javafx.scene.transform.Scale;
import javafx.util.Duration;

/**
 * What a world in three dimensions is seen through: as fine as the screen while it stands still,
 * and coarser while it is being turned, so that it follows the hand where graphics are drawn by
 * software.
 */
public final class Glass extends Region {
  /** Most pixels of a picture of a moving world. */
  private static final double MOVING_PIXELS = 110_000;

  private static final double STILL_AFTER_MS = 220;

  private final SubScene picture;
  private final Scale enlarge = new Scale(1, 1);
  private final PauseTransition rest = new PauseTransition(Duration.millis(STILL_AFTER_MS));
  private boolean moving;

  Glass(Group world, PerspectiveCamera camera) {
    picture = new SubScene(world, 400, 400, true, SceneAntialiasing.BALANCED);
    picture.setCamera(camera);
    picture.getTransforms().add(enlarge);
    picture.setManaged(false);
    rest.setOnFinished(e -> still());
    getChildren().add(picture);
  }

  /** What stands behind the world. */
  public void setFill(Paint paint) {
    picture.setFill(paint);
  }

  @Override
  protected void layoutChildren() {
    double w = Math.max(1, getWidth());
    double h = Math.max(1, getHeight());
    double share = moving ? Math.min(1, Math.sqrt(MOVING_PIXELS / (w * h))) : 1;
    picture.setWidth(Math.ceil(w * share));
    picture.setHeight(Math.ceil(h * share));
    enlarge.setX(w / picture.getWidth());
    enlarge.setY(h / picture.getHeight());
  }

  /** Says that the world is being turned; it is drawn finely again when that has ended. */
  void moving() {
    rest.playFromStart();
    change(true);
  }

  /** Draws the world finely. */
  void still() {
    rest.stop();
    change(false);
  }

  private void change(boolean now) {
    if (moving != now) {
      moving = now;
      layoutChildren();
    }
  }
}
