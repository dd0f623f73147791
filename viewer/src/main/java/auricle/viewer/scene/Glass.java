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
 * What a world in three dimensions is seen through: with smoothed edges while it stands still, and
 * coarser while it is being turned, so that it follows the hand where graphics are drawn by
 * software.
 */
public final class Glass extends Region {
  /** Most pixels of a picture of a moving world. */
  private static final double QUICK_PIXELS = 160_000;

  private static final double STILL_AFTER_MS = 220;

  private final Group world;
  private final PerspectiveCamera camera;
  private final SubScene fine;
  private final SubScene quick;
  private final Scale enlarge = new Scale(1, 1);
  private final PauseTransition rest = new PauseTransition(Duration.millis(STILL_AFTER_MS));

  Glass(Group world, PerspectiveCamera camera) {
    this.world = world;
    this.camera = camera;
    fine = new SubScene(world, 400, 400, true, SceneAntialiasing.BALANCED);
    fine.setCamera(camera);
    quick = new SubScene(new Group(), 400, 400, true, SceneAntialiasing.DISABLED);
    quick.getTransforms().add(enlarge);
    quick.setVisible(false);
    quick.setManaged(false);
    fine.setManaged(false);
    rest.setOnFinished(e -> still());
    getChildren().addAll(fine, quick);
  }

  /** What stands behind the world. */
  public void setFill(Paint paint) {
    fine.setFill(paint);
    quick.setFill(paint);
  }

  @Override
  protected void layoutChildren() {
    double w = Math.max(1, getWidth());
    double h = Math.max(1, getHeight());
    fine.setWidth(w);
    fine.setHeight(h);
    double share = Math.min(1, Math.sqrt(QUICK_PIXELS / (w * h)));
    quick.setWidth(Math.ceil(w * share));
    quick.setHeight(Math.ceil(h * share));
    enlarge.setX(w / quick.getWidth());
    enlarge.setY(h / quick.getHeight());
  }

  /** Says that the world is being turned; it is drawn finely again when that has ended. */
  void moving() {
    if (!quick.isVisible()) {
      hand(fine, quick);
    }
    rest.playFromStart();
  }

  /** Draws the world finely. */
  void still() {
    rest.stop();
    if (quick.isVisible()) {
      hand(quick, fine);
    }
  }

  private void hand(SubScene from, SubScene to) {
    from.setCamera(null);
    from.setRoot(new Group());
    to.setRoot(world);
    to.setCamera(camera);
    from.setVisible(false);
    to.setVisible(true);
  }
}
