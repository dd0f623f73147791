package auricle.viewer.app;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.shape.Rectangle;

/**
 * Lets a thread wait until what it has had changed on the screen is drawn. A frame is drawn on a
 * thread of its own; a small picture of something else, asked for in the pulse after it, is made
 * behind it on that thread, and what the frame left to be handed to the window is done before what
 * is asked for then.
 */
final class FrameDrawn {
  private static final long LOOK_EVERY_MS = 2;

  private FrameDrawn() {}

  /**
   * Waits for the first frame with all changes in it that were asked for before; not on the
   * screen's thread.
   *
   * @param longest_ms to wait at most: a window that is hidden is not drawn
   * @param enough whether not to wait any longer
   */
  static void await(long longest_ms, BooleanSupplier enough) {
    CountDownLatch drawn = new CountDownLatch(1);
    Platform.runLater(() -> new Watch(drawn).start());
    long start = System.nanoTime();
    try {
      while (!drawn.await(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)
          && !enough.getAsBoolean()
          && System.nanoTime() - start < longest_ms * 1_000_000) {}
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Its first pulse is that in which the changes are handed over for drawing. */
  private static final class Watch extends AnimationTimer {
    private final CountDownLatch drawn;
    private boolean handedOver;

    Watch(CountDownLatch drawn) {
      this.drawn = drawn;
    }

    @Override
    public void handle(long now) {
      if (handedOver) {
        stop();
        new Rectangle(1, 1).snapshot(null, null);
        Platform.runLater(drawn::countDown);
      }
      handedOver = true;
    }
  }
}
