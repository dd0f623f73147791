package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.equilibrium.TotalEnergy;
import auricle.material.Prony;
import auricle.testing.Check;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrowingLayerTest {
  private static final double DAY = Durations.DAY_S;
  private static final double SHARE = 0.3;
  private static final ScarGrowth GROWTH = new ScarGrowth(20);
  private static final TimeStepSettings FINE =
      TimeStepSettings.USUAL.withTolerance(1e-3).withFirst(60);

  /**
   * Scar that forms while the strip is held bent holds the bend against the strip: α P / (D + α P).
   */
  @ParameterizedTest
  @ValueSource(doubles = {3, 20, 90})
  void scarHoldsTheShapeInWhichItFormed(double days) {
    ViscousStrip strip = new ViscousStrip(Prony.NONE, FINE);
    GrowingLayer scar = strip.scar(SHARE, GROWTH);
    TotalEnergy energy = strip.turned(0.1);
    TimeSteps steps = strip.steps(energy, 0);
    steps.settle();
    assertTrue(steps.reach(days * DAY).converged());
    double held = strip.reaction(energy, true);
    TotalEnergy free = strip.letGo(energy);
    TimeSteps released = strip.steps(free, days * DAY);
    assertTrue(released.settle().converged());
    double grown = SHARE * GROWTH.share(days * DAY);
    Check.within(
        1e-9, scar.formed(), GROWTH.share(days * DAY), "share formed, closed form of the growth");
    Check.close(strip.turn(free) / 0.1, grown / (1 + grown), 1e-4, 1, "two springs in parallel");
    double moment = 0.1 * ViscousStrip.BEND_STIFFNESS / ViscousStrip.LENGTH;
    Check.within(1e-3, held, moment, "scar that forms free of stress changes no force");
  }

  @Test
  void whatFormsLaterFormsInTheLaterShape() {
    ViscousStrip strip = new ViscousStrip(Prony.NONE, FINE);
    strip.scar(SHARE, GROWTH);
    TotalEnergy energy = strip.turned(0.1);
    TimeSteps steps = strip.steps(energy, 0);
    steps.settle();
    steps.reach(10 * DAY);
    TotalEnergy free = strip.letGo(energy);
    TimeSteps released = strip.steps(free, 10 * DAY);
    released.settle();
    double before = strip.turn(free);
    assertTrue(released.reach(365 * DAY).converged());
    // dκ (1 + P α) = 0 while nothing pulls: new scar forms in the present shape and pulls at
    // nothing
    Check.within(1e-3, strip.turn(free), before, "scar formed free of stress pulls at nothing");
  }
}
