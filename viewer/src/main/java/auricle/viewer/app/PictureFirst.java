package auricle.viewer.app;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Lets what is seen go first, where solver and picture want the same processors: works out a plan
 * only when the first ear is on the screen, and leads a turned ear to rest only when it has been
 * drawn where it is foreseen.
 */
final class PictureFirst implements Rehearser {
  /** A window that is never drawn holds nothing up for longer. */
  private static final long LONGEST_MS = 5000;

  /** A turn waits no longer for its picture. */
  private static final long TURN_MS = 150;

  private final Rehearser rehearser;
  private final CountDownLatch drawn;
  private final Frames frames;

  /** What tells that something has been drawn. */
  @FunctionalInterface
  interface Frames {
    /** Waits until what has been asked for is drawn, so long at most, or until it is enough. */
    void await(long longest_ms, BooleanSupplier enough);
  }

  PictureFirst(Rehearser rehearser, CountDownLatch drawn, Frames frames) {
    this.rehearser = rehearser;
    this.drawn = drawn;
    this.frames = frames;
  }

  @Override
  public Optional<Rehearsed> atOnce(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> foreseen) throws CannotRehearse {
    return rehearser.atOnce(
        ear,
        watcher,
        end -> {
          foreseen.accept(end);
          frames.await(TURN_MS, watcher::cancelled);
        });
  }

  @Override
  public Optional<Rehearsed> tied(
      EarCase ear, RehearsalWatcher watcher, Consumer<Rehearsed> onTheWay) throws CannotRehearse {
    return wait(watcher) ? rehearser.tied(ear, watcher, onTheWay) : Optional.empty();
  }

  /** Whether the wait ended otherwise than by the end of the work. */
  private boolean wait(RehearsalWatcher watcher) {
    try {
      long start = System.nanoTime();
      while (!drawn.await(5, TimeUnit.MILLISECONDS)
          && System.nanoTime() - start < LONGEST_MS * 1_000_000) {
        if (watcher.cancelled()) {
          return false;
        }
      }
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Override
  public Optional<Rehearsed> overAYear(Rehearsed tied, int samples, RehearsalWatcher watcher)
      throws CannotRehearse {
    return rehearser.overAYear(tied, samples, watcher);
  }

  @Override
  public Optional<Rehearsed> withReactions(Rehearsed tied, RehearsalWatcher watcher)
      throws CannotRehearse {
    return rehearser.withReactions(tied, watcher);
  }
}
