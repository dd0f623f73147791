package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.shape.Rectangle;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A thread waits until what it changed is drawn, and no longer than it likes. */
@ExtendWith({NeedsDisplay.class, ApplicationExtension.class})
@SuppressWarnings("NullAway.Init") // made when the toolkit has started
class FrameDrawnTest {
  private static final long LONG_MS = 20_000;

  private final AtomicLong pulses = new AtomicLong();
  private Rectangle square;

  @Start
  void start(Stage stage) {
    square = new Rectangle(20, 20);
    stage.setScene(new Scene(new Group(square), 200, 200));
    stage.show();
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        pulses.incrementAndGet();
      }
    }.start();
  }

  private static long taken_ms(long longest_ms, boolean enough) {
    long start = System.nanoTime();
    FrameDrawn.await(longest_ms, () -> enough);
    return (System.nanoTime() - start) / 1_000_000;
  }

  @Test
  void itComesAfterThePulseThatHandedTheChangeOver() throws InterruptedException {
    AtomicLong changed = new AtomicLong();
    Platform.runLater(
        () -> {
          square.setX(50);
          changed.set(pulses.get());
        });
    assertTrue(taken_ms(LONG_MS, false) < LONG_MS, "it is told, not waited for in vain");
    AtomicLong now = new AtomicLong();
    OnScreen.run(() -> now.set(pulses.get()));
    assertTrue(now.get() >= changed.get() + 2, now + " pulses, changed at " + changed);
  }

  @Test
  void aScreenThatDoesNotAnswerHoldsNothingUpForLong() {
    CountDownLatch blocked = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          try {
            blocked.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
        });
    try {
      assertTrue(taken_ms(50, false) >= 50);
      assertTrue(taken_ms(LONG_MS, true) < LONG_MS, "nobody wants it any more");
    } finally {
      blocked.countDown();
    }
  }
}
