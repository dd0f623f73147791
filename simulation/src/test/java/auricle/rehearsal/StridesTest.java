package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.material.MaterialTables;
import auricle.plan.BowlStrip;
import auricle.plan.FoldSuture;
import auricle.plan.LobuleSuture;
import auricle.plan.Operation;
import auricle.plan.Plan;
import auricle.plan.Tie;
import auricle.testing.OpenFold;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Ties that move much of the ear: led to rest in strides, or drawn in until they pull as asked. */
class StridesTest {
  /** Asked for at once and halved where that failed, the suture took 61. */
  private static final int FEW = 30;

  private static StepResult last(Operation... operations) throws BadInputException {
    return last(RehearsalWatcher.SILENT, operations);
  }

  private static StepResult last(RehearsalWatcher watcher, Operation... operations)
      throws BadInputException {
    return LiveEar.of(
            OpenFold.with(Plan.of(operations)),
            RehearsalSettings.tied(),
            MaterialTables.shipped(),
            watcher)
        .result()
        .after();
  }

  @Test
  void aLobuleThatSwingsFarComesToRestInFewIterations() throws BadInputException {
    StepResult swung =
        last(
            FoldSuture.square("second fold", 66, 7, -6, 8, new Tie.Gap(9.25), OpenFold.THREAD),
            BowlStrip.usual("bowl strip"),
            LobuleSuture.usual("lobule", new Tie.Gap(12), OpenFold.THREAD));
    assertTrue(swung.outcome().converged(), swung.outcome().words());
    assertTrue(swung.outcome().iterations() <= FEW, swung.outcome().toString());
  }

  @Test
  void aPullThatCannotBeRaisedAtOnceIsMetByDrawingIn() throws BadInputException {
    StepResult pulled = last(LobuleSuture.usual("lobule", new Tie.Tension(0.4), OpenFold.THREAD));
    assertTrue(pulled.outcome().converged(), pulled.outcome().words());
    assertEquals(0.4, pulled.threads().get(0).tension_n(), 1e-5);
  }

  /**
   * The ear gives way under the whole pull, and the thread runs through: that is told. Cancelled on
   * the way, the step is told as cancelled, not as one without rest.
   */
  @Test
  @Tag("slow")
  void aPullThatTheEarGivesWayUnderRunsThroughAndSaysSo() throws BadInputException {
    FoldSuture tight =
        FoldSuture.square("tight", 80, 4, -4, 12, new Tie.Tension(2.1), OpenFold.THREAD);
    CancelledAfter never = new CancelledAfter(Integer.MAX_VALUE);
    StepOutcome pulled = last(never, tight).outcome();
    assertTrue(pulled.converged(), pulled.words());
    assertTrue(pulled.events().toString().contains("ran through to a loop"), pulled.toString());
    StepOutcome cancelled = last(new CancelledAfter(never.asked.get() - 3), tight).outcome();
    assertTrue(cancelled.cancelled() && !cancelled.converged(), cancelled.toString());
  }

  /** Cancels when it has been asked so many times. */
  private record CancelledAfter(int asks, AtomicInteger asked) implements RehearsalWatcher {
    CancelledAfter(int asks) {
      this(asks, new AtomicInteger());
    }

    @Override
    public void progress(String words, double share) {}

    @Override
    public boolean cancelled() {
      return asked.incrementAndGet() > asks;
    }
  }
}
