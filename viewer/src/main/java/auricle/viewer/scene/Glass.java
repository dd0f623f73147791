package auricle.viewer.scene;

import javafx.animation.AnimationTimer;
import javafx.scene.Group;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.layout.Region;
import javafx.scene.paint.Paint;

/**
 * What a world in three dimensions is seen through: smooth while it stands still, without smoothing
 * while it moves, so that it follows the hand where graphics are drawn by software. Smoothing
 * cannot be switched on a sub-scene, so there are two, and the world is handed from one to the
 * other. (A sub-scene that is made smaller and enlarged by a transform is no cheaper: JavaFX draws
 * it in the pixels of the screen all the same.)
 */
public final class Glass extends Region {
  private static final double STILL_AFTER_NS = 220e6;

  /** So many frames are let pass as well: where they are slow, time alone would end every move. */
  private static final int STILL_AFTER_FRAMES = 3;

  private final Group world;
  private final PerspectiveCamera camera;
  private final SubScene fine = pane(SceneAntialiasing.BALANCED);
  private final SubScene quick = pane(SceneAntialiasing.DISABLED);
  private final Runnable whenStill;
  private final Rest rest = new Rest();
  private boolean moving;

  /** Ends a move when nothing has moved for a while. */
  private final class Rest extends AnimationTimer {
    private long since;
    private int frames;

    /** Begins to wait anew. */
    void again() {
      since = System.nanoTime();
      frames = 0;
      start();
    }

    @Override
    public void handle(long now) {
      frames++;
      if (frames > STILL_AFTER_FRAMES && System.nanoTime() - since > STILL_AFTER_NS) {
        still();
      }
    }
  }

  /**
   * @param whenStill is done when a move ends, before the world is drawn finely
   */
  Glass(Group world, PerspectiveCamera camera, Runnable whenStill) {
    this.world = world;
    this.camera = camera;
    this.whenStill = whenStill;
    quick.setVisible(false);
    fine.setRoot(world);
    fine.setCamera(camera);
    getChildren().addAll(fine, quick);
  }

  private static SubScene pane(SceneAntialiasing smoothing) {
    SubScene pane = new SubScene(new Group(), 400, 400, true, smoothing);
    pane.setManaged(false);
    return pane;
  }

  /** What stands behind the world. */
  public void setFill(Paint paint) {
    fine.setFill(paint);
    quick.setFill(paint);
  }

  @Override
  protected void layoutChildren() {
    SubScene shown = moving ? quick : fine;
    shown.setWidth(Math.ceil(Math.max(1, getWidth())));
    shown.setHeight(Math.ceil(Math.max(1, getHeight())));
  }

  /** Whether the world is drawn as one that moves. */
  public boolean isMoving() {
    return moving;
  }

  /** Says that the world moves; it is drawn finely again when that has ended. */
  void moving() {
    rest.again();
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
      if (!now) {
        whenStill.run();
      }
      hand(now ? fine : quick, now ? quick : fine);
      layoutChildren();
    }
  }

  private void hand(SubScene from, SubScene to) {
    from.setRoot(new Group());
    from.setCamera(null);
    from.setVisible(false);
    to.setRoot(world);
    to.setCamera(camera);
    to.setVisible(true);
  }
}
