package auricle.property;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.equilibrium.LoadPath;
import auricle.equilibrium.LoadSteps;
import auricle.equilibrium.StepMonitor;
import auricle.equilibrium.StepSettings;
import auricle.equilibrium.TotalEnergy;
import auricle.numerics.NewtonResult;
import auricle.numerics.Outcome;
import auricle.numerics.SymmetricMatrix;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Random small shells: each ends in a typed outcome with words, none throws, none hangs, none is
 * called converged while its forces do not balance. The full run is {@code
 * -Dauricle.randomShells=10000}.
 */
class RandomShellsTest {
  private static final int COUNT = Integer.getInteger("auricle.random.models", 300) / 2;
  private static final long MOST_ITERATIONS = 3000;
  private final Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);

  @Test
  void everyShellEndsInAWordedOutcomeThatIsTrue() {
    for (long seed = 1; seed <= COUNT; seed++) {
      long thisOne = seed;
      assertTimeoutPreemptively(
          Duration.ofSeconds(120), () -> solve(thisOne), () -> "shell " + thisOne + " hangs");
    }
    System.err.println(COUNT + " random shells: " + outcomes);
    int converged = outcomes.getOrDefault(Outcome.CONVERGED, 0);
    // those held too little may not converge; of the rest nearly all must
    assertTrue(converged >= 0.8 * COUNT, outcomes::toString);
  }

  private void solve(long seed) {
    TotalEnergy energy = new RandomShell(seed).build();
    int[] iterations = {0};
    StepMonitor monitor = (loadFactor, iteration) -> ++iterations[0] < MOST_ITERATIONS;
    LoadPath path = new LoadSteps(energy, StepSettings.USUAL, monitor).run(0.5, 1);
    outcomes.merge(path.outcome(), 1, Integer::sum);
    if (path.outcome() == Outcome.CONVERGED) {
      assertBalanced(seed, energy, path);
    } else {
      assertTrue(!path.reason().isBlank(), "shell " + seed + " ended without words");
      if (Boolean.getBoolean("auricle.tellUnsolved")) {
        System.err.println(seed + " " + path.outcome() + ": " + path.reason());
      }
    }
  }

  private static void assertBalanced(long seed, TotalEnergy energy, LoadPath path) {
    NewtonResult result = path.last().solution();
    assertEquals(1, path.last().loadFactor(), 0);
    assertTrue(result.residual() <= result.tolerance(), "shell " + seed);
    // measured anew, not taken from the solver's own word
    double[] x = energy.free();
    double[] gradient = new double[energy.size()];
    double value = energy.derivatives(x, gradient, new SymmetricMatrix(energy.pattern()));
    assertTrue(Double.isFinite(value), "shell " + seed);
    for (int i = 0; i < gradient.length; i++) {
      double residual = Math.abs(gradient[i]) / energy.unit(i);
      assertTrue(
          residual <= 1.01 * result.tolerance(),
          "shell " + seed + ": residual " + residual + " of " + result.tolerance());
    }
  }
}
