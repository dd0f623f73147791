package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import auricle.numerics.Outcome;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/**
 * Property: whatever the model, a run ends in a worded outcome within bounded time, and what is
 * said to be at rest is. As many models as the system property {@code auricle.random.models} says,
 * a fifth of them shells.
 */
class RandomModelsTest {
  private static final int MODELS = Integer.getInteger("auricle.random.models", 300);
  private static final Duration LONGEST = Duration.ofSeconds(60);

  /** Of a run; failed steps are part of the game, but not thousands. */
  private static final int MOST_STEPS = 60;

  private static RandomModel model(int number) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20_000L + number);
    return number % 5 == 0 ? new RandomShell(random) : new RandomNetwork(random);
  }

  @Test
  void everyRunEndsInAWordedOutcomeAndWhatIsSaidToBeAtRestIs() {
    Map<Outcome, Integer> count = new EnumMap<>(Outcome.class);
    for (int number = 0; number < MODELS; number++) {
      int n = number;
      LoadPath path =
          assertTimeoutPreemptively(LONGEST, () -> run(n), () -> "model " + n + " took too long");
      count.merge(path.outcome(), 1, Integer::sum);
    }
    assertFalse(count.getOrDefault(Outcome.CONVERGED, 0) < MODELS / 4, "few at rest: " + count);
  }

  static LoadPath run(int number) {
    RandomModel model = model(number);
    TotalEnergy energy = model.energy();
    StepMonitor monitor = monitor(model);
    LoadPath path =
        number % 7 == 3 ? followed(energy, monitor) : stepped(energy, monitor, model.chance(0.5));
    String name = "model " + number;
    assertFalse(path.reason().isBlank(), name);
    for (EquilibriumState state : path.states()) {
      assertEquals(Outcome.CONVERGED, state.solution().outcome(), name);
      RestAudit.assertAtRest(model.energy(), state, name);
    }
    if (path.outcome() == Outcome.CONVERGED) {
      assertEquals(1, path.last().loadFactor(), 1e-12, name + " ends where it was asked to");
    }
    for (EquilibriumState state : path.requested()) {
      double off = Math.min(Math.abs(state.loadFactor() - 0.5), Math.abs(state.loadFactor() - 1));
      assertEquals(0, off, 1e-12, name + " is where it was asked for");
    }
    return path;
  }

  private static LoadPath stepped(TotalEnergy energy, StepMonitor monitor, boolean half) {
    StepSettings usual = StepSettings.USUAL;
    StepSettings settings =
        new StepSettings(
            usual.newton(),
            usual.first(),
            usual.smallest(),
            usual.largest(),
            usual.easy(),
            usual.hard(),
            MOST_STEPS);
    LoadSteps steps = new LoadSteps(energy, settings, monitor);
    return half ? steps.run(0.5, 1) : steps.run(1);
  }

  private static LoadPath followed(TotalEnergy energy, StepMonitor monitor) {
    PathSettings usual = PathSettings.USUAL;
    PathSettings settings =
        new PathSettings(
            usual.newton(), usual.first(), usual.smallest(), usual.largest(), MOST_STEPS);
    return new PathFollowing(energy, settings, monitor)
        .run(PathLevel.load(1), List.of(PathLevel.load(0.5)));
  }

  /** Now and then one that cancels. */
  private static StepMonitor monitor(RandomModel model) {
    if (!model.chance(0.03)) {
      return StepMonitor.NONE;
    }
    int[] left = {model.random.nextInt(20)};
    return (lambda, iteration) -> left[0]-- > 0;
  }
}
