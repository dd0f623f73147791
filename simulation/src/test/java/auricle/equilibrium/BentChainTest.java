package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.Outcome;
import org.junit.jupiter.api.Test;

class BentChainTest {
  private static final BentChain CHAIN = new BentChain(40, 0.25, 4);

  @Test
  void bendsAsTheExactDiscreteElasticaInOneStepHoweverStiffItsSegments() {
    for (double force : new double[] {0.01, 0.1, 0.3, 1}) {
      LoadSteps steps =
          new LoadSteps(CHAIN.loaded(1e8, force), StepSettings.USUAL, StepMonitor.NONE);
      LoadPath path = steps.run(1);
      assertEquals(Outcome.CONVERGED, path.outcome(), path.reason());
      assertEquals(CHAIN.deflection(force), path.last().unknowns()[CHAIN.tip()], 1e-7);
      assertTrue(path.events().isEmpty());
      assertEquals(2, path.states().size(), "one step after the start");
    }
  }
}
