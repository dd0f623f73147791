package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.Outcome;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Sensible shells of random making: each ends in a typed outcome with words, none throws, none
 * hangs, none is called converged while its forces do not balance; nearly all that are held come to
 * rest. Half as many as the system property {@code auricle.random.models} says.
 */
class SensibleShellsTest {
  private static final int COUNT = Integer.getInteger("auricle.random.models", 300) / 2;
  private static final long MOST_ITERATIONS = 3000;
  private final Map<Outcome, Integer> held = new EnumMap<>(Outcome.class);
  private final Map<Outcome, Integer> loose = new EnumMap<>(Outcome.class);

  @Test
  void everyShellEndsInAWordedOutcomeThatIsTrue() {
    for (long seed = 1; seed <= COUNT; seed++) {
      long thisOne = seed;
      assertTimeoutPreemptively(
          Duration.ofSeconds(120), () -> solve(thisOne), () -> "shell " + thisOne + " hangs");
    }
    String told =
        COUNT + " random shells: held " + held + ", free to move as rigid bodies " + loose;
    System.err.println(told);
    int converged = held.getOrDefault(Outcome.CONVERGED, 0);
    int all = held.values().stream().mapToInt(Integer::intValue).sum();
    assertTrue(converged >= 0.9 * all, told);
  }

  private void solve(long seed) {
    SensibleShell shell = new SensibleShell(seed);
    int[] iterations = {0};
    StepMonitor monitor = (loadFactor, iteration) -> ++iterations[0] < MOST_ITERATIONS;
    LoadPath path = new LoadSteps(shell.energy(), StepSettings.USUAL, monitor).run(0.5, 1);
    (shell.held() ? held : loose).merge(path.outcome(), 1, Integer::sum);
    if (path.outcome() == Outcome.CONVERGED) {
      assertEquals(1, path.last().loadFactor(), 0);
      RestAudit.assertAtRest(new SensibleShell(seed).energy(), path.last(), "shell " + seed);
    } else {
      assertTrue(!path.reason().isBlank(), "shell " + seed + " ended without words");
      if (Boolean.getBoolean("auricle.tellUnsolved")) {
        System.err.println(
            seed + (shell.held() ? " held " : " loose ") + path.outcome() + ": " + path.reason());
      }
    }
  }
}
