package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4})
  void everyPieceIsDoneOnceAndNoWorkerDoesTwoAtATime(int threads) {
    Workers workers = Workers.of(threads);
    AtomicIntegerArray times = new AtomicIntegerArray(1000);
    AtomicIntegerArray busy = new AtomicIntegerArray(threads);
    for (int round = 0; round < 20; round++) {
      workers.run(
          1000,
          (number, worker) -> {
            assertEquals(1, busy.incrementAndGet(worker));
            times.incrementAndGet(number);
            busy.decrementAndGet(worker);
          });
    }
    for (int i = 0; i < 1000; i++) {
      assertEquals(20, times.get(i));
    }
  }

  @Test
  void piecesAreDoneSideBySide() {
    CountDownLatch both = new CountDownLatch(2);
    Workers.of(2)
        .run(
            2,
            (number, worker) -> {
              both.countDown();
              assertTrue(met(both));
            });
  }

  private static boolean met(CountDownLatch both) {
    try {
      return both.await(20, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void piecesMayAskForHelpThemselves() {
    Workers workers = Workers.of(2);
    AtomicIntegerArray times = new AtomicIntegerArray(64);
    workers.run(
        8, (outer, w) -> workers.run(8, (inner, v) -> times.incrementAndGet(8 * outer + inner)));
    for (int i = 0; i < 64; i++) {
      assertEquals(1, times.get(i));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4})
  void whatAPieceThrowsIsThrown(int threads) {
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () ->
                Workers.of(threads)
                    .run(
                        100,
                        (number, worker) -> {
                          if (number == 37) {
                            throw new IllegalStateException("piece 37");
                          }
                        }));
    assertEquals("piece 37", thrown.getMessage());
  }

  @Test
  void thosePresentAreTheSharedOnesButWithinOthers() throws Exception {
    Workers shared = Workers.present();
    Callable<Workers> asked = Workers::present;
    assertSame(Workers.ALONE, Workers.ALONE.within(asked));
    assertSame(shared, Workers.present());
    assertThrows(
        IllegalStateException.class,
        () ->
            Workers.ALONE.within(
                () -> {
                  throw new IllegalStateException();
                }));
    assertSame(shared, Workers.present());
    assertEquals(1, Workers.ALONE.threads());
  }
}
