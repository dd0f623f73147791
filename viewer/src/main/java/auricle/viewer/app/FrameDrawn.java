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
    tell(() -> true, drawn::countDown);
    long start = System.nanoTime();
    try {
      while (!drawn.await(LOOK_EVERY_MS, TimeUnit.MILLISECONDS)
          && !enough.getAsBoolean()
          && System.nanoTime() - start < longest_ms * 1_000_000) {}
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Tells, on the screen's thread, that something is so and the frame that shows it is drawn.
   *
   * @param there asked in every pulse, in which it is handed over for drawing
   */
  static void tell(BooleanSupplier there, Runnable drawn) {
    Platform.runLater(() -> new Watch(there, drawn).start());
  }

  private static final class Watch extends AnimationTimer {
    private final BooleanSupplier there;
    private final Runnable drawn;
    private boolean handedOver;

    Watch(BooleanSupplier there, Runnable drawn) {
      this.there = there;
      this.drawn = drawn;
    }

    @Override
    public void handle(long now) {
      if (handedOver) {
        stop();
        new Rectangle(1, 1).snapshot(null, null);
        Platform.runLater(drawn);
      }
      handedOver = there.getAsBoolean();
    }
  }
}
