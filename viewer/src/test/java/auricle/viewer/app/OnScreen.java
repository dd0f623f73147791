package auricle.viewer.app;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.scene.Orbit;
import auricle.viewer.view.Workbench;
import java.lang.management.ManagementFactory;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/** What a script needs to drive a window and to measure it. */
final class OnScreen {
  private static final long LONGEST_S = 90;

  private OnScreen() {}

  /** Does something on the screen's thread and waits for it. */
  static void run(Runnable action) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () -> {
          action.run();
          done.countDown();
        });
    done.await();
  }

  /** The same once the toolkit has started; nothing before. */
  static void tryToRun(Runnable action) throws InterruptedException {
    try {
      run(action);
    } catch (IllegalStateException e) {
      Thread.sleep(1); // it has not started yet
    }
  }

  /** Waits until something is so and the frame that shows it is in the window. */
  static void drawn(BooleanSupplier there) throws InterruptedException {
    CountDownLatch done = new CountDownLatch(1);
    FrameDrawn.tell(there, done::countDown);
    if (!done.await(LONGEST_S, TimeUnit.SECONDS)) {
      throw new IllegalStateException("nothing came within " + LONGEST_S + " s");
    }
  }

  /** Frames a second while the eye goes around the ear. */
  static double framesWhileTurning(Workbench bench, double seconds) throws InterruptedException {
    Orbit from = Orbit.at(ClinicalView.THREE_QUARTER);
    return frames(s -> bench.sweep(from.turned(60 * s, 0)), seconds);
  }

  /**
   * Frames a second while something is changed before each, by the seconds gone since the start.
   */
  static double frames(DoubleConsumer change, double seconds) throws InterruptedException {
    AtomicInteger frames = new AtomicInteger();
    CountDownLatch done = new CountDownLatch(1);
    Platform.runLater(
        () ->
            new AnimationTimer() {
              private long start = -1;

              @Override
              public void handle(long now) {
                start = start < 0 ? now : start;
                double s = (now - start) / 1e9;
                change.accept(s);
                frames.incrementAndGet();
                if (s > seconds) {
                  stop();
                  done.countDown();
                }
              }
            }.start());
    done.await();
    return frames.get() / seconds;
  }

  /** Processor time of the whole program so far, ms. */
  static long cpu_ms() {
    var system = ManagementFactory.getOperatingSystemMXBean();
    return system instanceof com.sun.management.OperatingSystemMXBean s
        ? s.getProcessCpuTime() / 1_000_000
        : 0;
  }

  /** What is kept after the collector has run, MB. */
  static double heap_mb() throws InterruptedException {
    for (int i = 0; i < 3; i++) {
      System.gc();
      Thread.sleep(100);
    }
    Runtime r = Runtime.getRuntime();
    return (r.totalMemory() - r.freeMemory()) / 1e6;
  }
}
