package auricle.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Lets an interrupt from the keyboard end a run in good order: the shutdown waits until the run has
 * noticed and cleaned up, some seconds at most.
 */
final class Cancellation implements AutoCloseable {
  private static final long PATIENCE_S = 20;

  private final AtomicBoolean asked = new AtomicBoolean();
  private final CountDownLatch finished = new CountDownLatch(1);
  private final Thread hook = new Thread(this::shutDown, "cancel");

  Cancellation() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void shutDown() {
    asked.set(true);
    try {
      if (!finished.await(PATIENCE_S, TimeUnit.SECONDS)) {
        System.err.println("The run did not stop in time; a hidden folder may be left.");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the run should end. */
  boolean asked() {
    return asked.get();
  }

  @Override
  public void close() {
    finished.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException alreadyEnding) {
      // the hook is what called us
    }
  }
}
