package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans of all kinds at random, on ears of all shapes: most come to rest, none throws. */
@Tag("slow")
class RandomPlansTest {
  private static final int PLANS = Integer.getInteger("auricle.random.plans", 60);
  private static final long FIRST = Long.getLong("auricle.random.first", 1);

  /**
   * Of a thousand plans that many steps may be without rest, said in words. The aim is 5. Of seeds
   * 1 to 60 one plan held one (38), of 1 to 300 fourteen plans held some (29 November 2026).
   */
  private static final int UNSOLVED_OF_THOUSAND = 34;

  @Test
  void mostComeToRestAndTheOthersSayWhyNot() throws BadInputException {
    List<String> unsolved = new ArrayList<>();
    for (long seed = FIRST; seed < FIRST + PLANS; seed++) {
      RehearsalResult result = RandomCase.of(seed, RehearsalWatcher.SILENT).run();
      for (StepResult step : result.steps()) {
        assertFalse(step.outcome().words().isBlank(), "words of seed " + seed);
        if (!step.outcome().converged()) {
          unsolved.add("seed %d, %s: %s".formatted(seed, step.label(), step.outcome().words()));
        }
      }
      assertTrue(Double.isFinite(result.after().measures().helixMastoidUpper_mm()), "seed " + seed);
    }
    String share =
        String.format(
            Locale.ROOT,
            "%d steps of %d plans did not come to rest: %s",
            unsolved.size(),
            PLANS,
            unsolved);
    assertTrue(1000L * unsolved.size() <= (long) UNSOLVED_OF_THOUSAND * PLANS, share);
  }

  /** In this plan the body softens, and a thread's foreseen length was once below nothing. */
  @Test
  void aThreadIsNeverDrawnInToNothing() throws BadInputException {
    RehearsalResult result = RandomCase.of(141, RehearsalWatcher.SILENT).run();
    assertTrue(result.steps().stream().noneMatch(s -> s.outcome().words().isBlank()));
  }

  /**
   * Ties at a tension under which the ear gives way on the way there: the thread is drawn in over
   * snaps and folds until it pulls as it should.
   */
  @ParameterizedTest
  @ValueSource(longs = {112, 118, 290})
  void aThreadIsDrawnInOverSnapsToItsTension(long seed) throws BadInputException {
    RehearsalResult result = RandomCase.of(seed, RehearsalWatcher.SILENT).run();
    assertTrue(result.steps().stream().allMatch(s -> s.outcome().converged()), "seed " + seed);
  }

  /** The tail of the cauda is drawn onto the bowl long before the thread pulls at 0.98 N. */
  @Test
  void aLoopWhoseBitesMeetIsKnottedShutAndSaysSo() throws BadInputException {
    StepResult tied = RandomCase.of(151, RehearsalWatcher.SILENT).run().steps().get(1);
    assertTrue(tied.outcome().converged(), tied.outcome().words());
    assertTrue(tied.outcome().words().contains("its bites meet"), tied.outcome().words());
    ThreadState thread = tied.threads().get(0);
    assertTrue(thread.length_mm() < 0.5, "length of the loop: " + thread.length_mm());
    assertTrue(thread.tension_n() < 0.4, "tension: " + thread.tension_n());
    assertTrue(thread.tension_n() > 0.1, "tension: " + thread.tension_n());
  }

  @Test
  void theSameSeedGivesTheSameBits() throws BadInputException {
    assertEquals(
        RandomCase.of(3, RehearsalWatcher.SILENT).run().after().measures(),
        RandomCase.of(3, RehearsalWatcher.SILENT).run().after().measures());
  }
}
