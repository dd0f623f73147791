package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.Outcome;
import org.junit.jupiter.api.Test;

class TwoBarTrussTest {
  private static double depth(EquilibriumState state) {
    return TwoBarTruss.HEIGHT - state.unknowns()[TwoBarTruss.APEX];
  }

  @Test
  void underGrowingLoadSnapsThroughAtTheLimitLoadAndSaysSo() {
    double limit = TwoBarTruss.force(TwoBarTruss.limitDepth());
    LoadSteps steps = new LoadSteps(TwoBarTruss.loaded(), StepSettings.USUAL, StepMonitor.NONE);
    LoadPath path = steps.run(0.5 * limit, 1.5 * limit);
    assertEquals(Outcome.CONVERGED, path.outcome(), path.reason());
    for (EquilibriumState state : path.states()) {
      assertEquals(TwoBarTruss.force(depth(state)), state.loadFactor(), 1e-7 * limit);
    }
    assertTrue(depth(path.last()) > 2 * TwoBarTruss.HEIGHT, "ends hanging");
    assertEquals(1, path.events().size());
    PathEvent snap = path.events().get(0);
    assertEquals(PathEvent.Kind.SNAP, snap.kind());
    assertTrue(snap.from() < limit && limit < snap.to(), snap.words());
    assertEquals(limit, snap.to(), 2e-3 * limit);
  }

  @Test
  void ledDownItFollowsTheWholeCurveWithTheReaction() {
    LoadSteps steps = new LoadSteps(TwoBarTruss.led(), StepSettings.USUAL, StepMonitor.NONE);
    LoadPath path = steps.run(0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5);
    assertEquals(Outcome.CONVERGED, path.outcome(), path.reason());
    assertEquals(9, path.requested().size());
    for (EquilibriumState state : path.states()) {
      double reaction = -state.reaction(TwoBarTruss.APEX);
      assertEquals(TwoBarTruss.force(state.loadFactor()), reaction, 1e-10);
    }
    assertTrue(path.events().isEmpty());
  }
}
