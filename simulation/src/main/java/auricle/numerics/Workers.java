package auricle.numerics;

import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/**
 * A few threads that do pieces of one computation side by side.
 *
 * <p>Whoever asks works along, so nothing ever waits for a thread that is busy elsewhere, and
 * pieces may ask for help themselves. How pieces are shared out differs from run to run: what they
 * compute must not depend on it.
 *
 * <p>As a rule there are as many threads as processors, or as the system property {@value #SETTING}
 * says. Who keeps all processors busy otherwise, as with samples side by side, calls the solver
 * within {@link #ALONE}. The threads end when they have been idle for a while and keep no program
 * from ending.
 */
public final class Workers {
  /** Name of the system property that sets the number of threads. */
  public static final String SETTING = "auricle.threads";

  /** The calling thread and no other. */
  public static final Workers ALONE = new Workers(1);

  private static final Workers SHARED =
      new Workers(
          Math.max(1, Integer.getInteger(SETTING, Runtime.getRuntime().availableProcessors())));

  private static final ThreadLocal<Workers> PRESENT = ThreadLocal.withInitial(() -> SHARED);

  private static final int SPINS = 2000;
  private static final int YIELDS = 50;
  private static final long NAP_NS = 20_000;

  private final int threads;
  private final ThreadPoolExecutor helpers;

  /** Pieces of work by number. */
  @FunctionalInterface
  public interface Work {
    /**
     * Does one piece.
     *
     * @param number of the piece, from 0
     * @param worker who does it: below the number of threads, and not two at a time by the same
     */
    void piece(int number, int worker);
  }

  private Workers(int threads) {
    this.threads = threads;
    int others = Math.max(1, threads - 1);
    helpers =
        new ThreadPoolExecutor(
            others, others, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), Workers::thread);
    helpers.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "worker");
    thread.setDaemon(true);
    return thread;
  }

  /** So many threads of their own, the calling one included. */
  public static Workers of(int threads) {
    return new Workers(threads);
  }

  /** Those that the calling thread may use. */
  public static Workers present() {
    return PRESENT.get();
  }

  /** How many work at a time, the calling one included. */
  public int threads() {
    return threads;
  }

  /**
   * Calls something for which these are the ones present.
   *
   * @throws Exception what it throws
   */
  public <T> T within(Callable<T> task) throws Exception {
    Workers before = PRESENT.get();
    PRESENT.set(this);
    try {
      return task.call();
    } finally {
      PRESENT.set(before);
    }
  }

  /**
   * Does all pieces and returns when they are done. They are begun in ascending order.
   *
   * @param pieces how many
   */
  public void run(int pieces, Work work) {
    if (threads == 1 || pieces == 1) {
      for (int number = 0; number < pieces; number++) {
        work.piece(number, 0);
      }
      return;
    }
    Batch batch = new Batch(pieces, work);
    for (int helper = 1; helper < Math.min(threads, pieces); helper++) {
      int worker = helper;
      helpers.execute(() -> batch.help(worker));
    }
    batch.help(0);
    batch.await();
  }

  /** Waits a little, the longer the more often it has been called in a row. */
  static void pause(int round) {
    if (round < SPINS) {
      Thread.onSpinWait();
    } else if (round < SPINS + YIELDS) {
      Thread.yield();
    } else {
      LockSupport.parkNanos(NAP_NS);
    }
  }

  /** One call of {@link #run}. */
  private static final class Batch {
    private final int pieces;
    private final Work work;
    private final AtomicInteger begun = new AtomicInteger();
    private final AtomicInteger ended = new AtomicInteger();
    private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

    Batch(int pieces, Work work) {
      this.pieces = pieces;
      this.work = work;
    }

    void help(int worker) {
      int number = begun.getAndIncrement();
      while (number < pieces) {
        try {
          work.piece(number, worker);
        } catch (RuntimeException | Error e) {
          failure.compareAndSet(null, e);
        } finally {
          ended.incrementAndGet();
        }
        number = begun.getAndIncrement();
      }
    }

    void await() {
      for (int round = 0; ended.get() < pieces; round++) {
        pause(round);
      }
      Throwable thrown = failure.get();
      if (thrown instanceof Error error) {
        throw error;
      }
      if (thrown instanceof RuntimeException exception) {
        throw exception;
      }
    }
  }
}
