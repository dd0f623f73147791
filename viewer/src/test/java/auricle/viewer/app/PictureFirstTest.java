package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.plan.EarCase;
import auricle.rehearsal.RehearsalWatcher;
import auricle.scenario.ScenarioReader;
import auricle.viewer.task.CannotRehearse;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Farsighted;
import auricle.viewer.viewmodel.StandInRehearser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** The plan waits for the first ear to be drawn, and never longer than it is wanted. */
class PictureFirstTest {
  private final EarCase ear = WorkedScenarios.first(ScenarioReader.shipped()).ear();
  private final CountDownLatch drawn = new CountDownLatch(1);
  private final PictureFirst first =
      new PictureFirst(new StandInRehearser(), drawn, (ms, enough) -> {});
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final RehearsalWatcher watcher =
      new RehearsalWatcher() {
        @Override
        public void progress(String words, double share) {}

        @Override
        public boolean cancelled() {
          return cancelled.get();
        }
      };

  private CompletableFuture<Optional<Rehearsed>> plan() {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return first.tied(ear, watcher, part -> {});
          } catch (CannotRehearse e) {
            throw new IllegalStateException(e);
          }
        });
  }

  @Test
  void thePlanIsWorkedOutWhenTheEarHasBeenDrawn() throws Exception {
    assertTrue(first.atOnce(ear, watcher, f -> {}).isPresent(), "the ear itself does not wait");
    CompletableFuture<Optional<Rehearsed>> plan = plan();
    Thread.sleep(200);
    assertFalse(plan.isDone());
    drawn.countDown();
    assertEquals(ear, plan.get(20, TimeUnit.SECONDS).orElseThrow().ear());
  }

  @Test
  void aTurnedEarIsDrawnWhereItIsForeseenBeforeItIsLedToRest() throws Exception {
    List<String> order = new ArrayList<>();
    drawn.countDown();
    PictureFirst turns =
        new PictureFirst(new Farsighted(true), drawn, (ms, enough) -> order.add("drawn"));
    turns.tied(ear, watcher, part -> {});
    Optional<Rehearsed> end = turns.atOnce(ear, watcher, f -> order.add(f.reach().name()));
    order.add(end.orElseThrow().reach().name());
    assertEquals(List.of("FORESEEN", "drawn", "END"), order);
  }

  @Test
  void aPlanThatIsOvertakenMeanwhileIsNotWorkedOut() throws Exception {
    CompletableFuture<Optional<Rehearsed>> plan = plan();
    cancelled.set(true);
    assertTrue(plan.get(20, TimeUnit.SECONDS).isEmpty());
  }
}
