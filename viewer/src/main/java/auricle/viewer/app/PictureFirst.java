package auricle.viewer.app;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.task.Rehearser;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Works out a plan only when the first ear is on the screen: both want the same processors, and
 * whoever starts the program waits for the ear.
 */
final class PictureFirst implements Rehearser {
  /** A window that is never drawn holds nothing up for longer. */
  private static final long LONGEST_MS = 5000;

  private final Rehearser rehearser;
  private final CountDownLatch drawn;

  PictureFirst(Rehearser rehearser, CountDownLatch drawn) {
    this.rehearser = rehearser;
    this.drawn = drawn;
  }

  @Override
  public Optional<Rehearsed> atOnce(EarCase ear, RehearsalWatcher watcher) throws CannotRehearse {
    return rehearser.atOnce(ear, watcher);
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
