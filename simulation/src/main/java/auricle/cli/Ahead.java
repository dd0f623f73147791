package auricle.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Something slow to load that is begun beside other work and waited for where it is needed. */
final class Ahead<T> {
  private final FutureTask<T> task;

  Ahead(Callable<T> loading) {
    this.task = new FutureTask<>(loading);
  }

  /** Begins on a thread of its own and returns at once. */
  void begin() {
    Thread thread = new Thread(task, "ahead");
    thread.setDaemon(true);
    thread.start();
  }

  /** What was loaded; loads it here if nobody has begun. */
  T get() {
    task.run();
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while loading", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a part of the program cannot be loaded", e);
    }
  }
}
