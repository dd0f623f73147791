package auricle.viewer.task;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One thread that does the job handed in last. A job that waits is dropped when a newer one comes;
 * one that runs is told so, and may end early.
 */
public final class LatestWins implements AutoCloseable {
  /** A piece of work. */
  @FunctionalInterface
  public interface Job {
    /**
     * Does the work.
     *
     * @param overtaken whether a newer job waits; safe to ask from any thread
     */
    void run(BooleanSupplier overtaken);
  }

  private final AtomicReference<@Nullable Job> waiting = new AtomicReference<>();
  private final ExecutorService thread;

  /** A queue whose thread has a name. */
  public LatestWins(String name) {
    thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread t = new Thread(work, name);
              t.setDaemon(true);
              return t;
            });
  }

  /** Hands in a job. */
  public void submit(Job job) {
    if (waiting.getAndSet(job) == null && !thread.isShutdown()) {
      thread.execute(this::runLatest);
    }
  }

  /** Does what is waiting, if anything is. */
  private void runLatest() {
    Job job = waiting.getAndSet(null);
    if (job != null) {
      job.run(() -> waiting.get() != null || thread.isShutdown());
    }
  }

  /** Ends the thread; a running job is told that it is overtaken. */
  @Override
  public void close() {
    waiting.set(null);
    thread.shutdownNow();
  }

  /** Waits until everything handed in is done; for tests and scripts. */
  public boolean settle(long milliseconds) throws InterruptedException {
    java.util.concurrent.CountDownLatch done = new java.util.concurrent.CountDownLatch(1);
    thread.execute(done::countDown);
    return done.await(milliseconds, TimeUnit.MILLISECONDS);
  }
}
