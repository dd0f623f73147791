package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import auricle.mesh.MovingFrame;
import java.util.List;
import org.junit.jupiter.api.Test;

class SensitivitiesTest {
  private static final BentChain CHAIN = new BentChain(20, 0.5, 4);

  @Test
  void theTipOfABentChainAnswersToMoreForceAsTheExactAnswerDoes() {
    double force = 0.1;
    TotalEnergy energy = CHAIN.loaded(1e8, force);
    new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(1);
    Sensitivities sensitivities = new Sensitivities(energy);
    double[] forceRate = new double[energy.unknowns().length];
    forceRate[CHAIN.tip()] = -1;
    double exact = (CHAIN.deflection(force + 1e-4) - CHAIN.deflection(force - 1e-4)) / 2e-4;
    double rate = sensitivities.rate(forceRate)[CHAIN.tip()];
    assertEquals(exact, rate, 1e-5 * exact);
    assertEquals(force * rate, sensitivities.rateByLoadFactor()[CHAIN.tip()], 1e-6 * rate);
  }

  @Test
  void theAdjointOfAMeasurementGivesTheSameRate() {
    TotalEnergy energy = CHAIN.loaded(1e6, 0.2);
    new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(1);
    Sensitivities sensitivities = new Sensitivities(energy);
    double[] forceRate = new double[energy.unknowns().length];
    double[] measureRate = new double[energy.unknowns().length];
    forceRate[CHAIN.tip() - 9] = -1;
    measureRate[CHAIN.tip()] = 1;
    double direct = sensitivities.rate(forceRate)[CHAIN.tip()];
    double adjoint = sensitivities.adjoint(measureRate)[CHAIN.tip() - 9];
    assertEquals(direct, adjoint, 1e-9 * Math.abs(direct));
  }

  @Test
  void aMechanismHasNone() {
    double[] line = {0, 0, 0, 1, 0, 0};
    Supports supports = new Supports.Builder(6, 6).fix(0).fix(1).fix(2).build();
    TotalEnergy loose =
        new TotalEnergy(List.of(new Bars(1, line, 0, 1)), supports, MovingFrame.NONE, line, 1);
    assertThrows(IllegalStateException.class, () -> new Sensitivities(loose));
  }
}
