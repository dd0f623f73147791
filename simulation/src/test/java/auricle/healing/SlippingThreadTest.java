package auricle.healing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.energy.ElasticThread;
import auricle.energy.FixedPoint;
import auricle.energy.VertexPoint;
import auricle.testing.Check;
import java.util.List;
import org.junit.jupiter.api.Test;

class SlippingThreadTest {
  private static final double DAY = Durations.DAY_S;
  private static final double SPRING = 0.2;
  private static final double AXIAL = 40;
  private static final double TIED = 8;
  private static final TimeStepSettings FINE =
      TimeStepSettings.USUAL.withTolerance(1e-5).withFirst(60);
  private static final ThreadStrength STRONG = new ThreadStrength(5, days -> 1, 8);
  private static final ScarGrowth NEVER = new ScarGrowth(1e6);

  /** Compliance of thread and spring together, mm/N. */
  private static final double COMPLIANCE = TIED / AXIAL + 1 / SPRING;

  private final SpringAndThread body = new SpringAndThread(SPRING, AXIAL, TIED);

  @Test
  void tensionFallsExponentiallyWhereBitesSlipWithoutHealing() {
    SlippingThread part =
        new SlippingThread("thread", body.thread, STRONG, new Migration(0.05, 0, 1), NEVER);
    TimeSteps steps = body.steps(FINE, part);
    steps.settle();
    double first = (SpringAndThread.SPAN - TIED) / COMPLIANCE;
    Check.within(1e-6, part.state().tension_n(), first, "closed form, spring and thread in a row");
    for (double days : new double[] {1, 10, 90, 365}) {
      assertTrue(steps.reach(days * DAY).converged());
      double left = first * Math.exp(-0.05 * days / COMPLIANCE);
      Check.within(1e-3, part.state().tension_n(), left, "closed form, dT/dt = −μ T / compliance");
      double slip = (first - left) * COMPLIANCE;
      Check.within(1e-3, part.state().slip_mm(), slip, "closed form, what the spring gave back");
    }
  }

  @Test
  void slipEndsAsHealingProceeds() {
    ScarGrowth healing = new ScarGrowth(20);
    SlippingThread part =
        new SlippingThread("thread", body.thread, STRONG, new Migration(0.05, 0, 1), healing);
    TimeSteps steps = body.steps(FINE, part);
    steps.settle();
    double first = part.state().tension_n();
    steps.reach(365 * DAY);
    // ∫ (1 − α) dt = τ √π / 2 in the long run
    double left = first * Math.exp(-0.05 * 20 * Math.sqrt(Math.PI) / 2 / COMPLIANCE);
    Check.within(1e-3, part.state().tension_n(), left, "closed form, Gaussian integral");
  }

  @Test
  void theSlipOfOneLongStepStaysWithinBounds() {
    SlippingThread part =
        new SlippingThread("thread", body.thread, STRONG, new Migration(50, 0, 1), NEVER);
    TimeSteps steps = body.steps(TimeStepSettings.USUAL.withTolerance(1e9).withFirst(1e9), part);
    steps.settle();
    assertTrue(steps.reach(3650 * DAY).converged());
    assertTrue(part.state().tension_n() >= 0);
    assertTrue(part.state().slip_mm() < 2.1, part.state().toString());
  }

  @Test
  void aKnotSeatsByItsSlackAndNoMore() {
    SlippingThread part =
        new SlippingThread("thread", body.thread, STRONG, new Migration(0, 0.3, 2), NEVER);
    TimeSteps steps = body.steps(FINE, part);
    steps.settle();
    double first = part.state().tension_n();
    steps.reach(2 * DAY);
    double out = 0.3 * (1 - Math.exp(-1));
    Check.within(1e-6, part.state().slip_mm(), out, "closed form, σ (1 − exp(−t/τ))");
    Check.within(1e-4, part.state().tension_n(), first - out / COMPLIANCE, "closed form");
  }

  @Test
  void aThreadThatLosesItsStrengthLetsGoWhenItPullsAtMoreThanIsLeft() {
    // 0.385 N against 1 N, of which days/100 are lost
    ThreadStrength absorbed = new ThreadStrength(1, days -> Math.max(0, 1 - days / 100), 8);
    SlippingThread part =
        new SlippingThread("thread", body.thread, absorbed, Migration.NONE, NEVER);
    TimeSteps steps = body.steps(FINE, part);
    steps.settle();
    double when = 100 * (1 - part.state().tension_n());
    assertTrue(steps.reach(when * 0.97 * DAY).events().isEmpty());
    TimeResult result = steps.reach(365 * DAY);
    assertTrue(result.converged());
    assertEquals(1, result.events().size());
    assertTrue(result.events().get(0).words().contains("lets go"), result.toString());
    Check.within(0.021, result.events().get(0).time_s(), when * DAY, "1 − t/100 d = tension");
    assertTrue(part.state().gone());
    assertEquals(0, part.state().tension_n());
  }

  @Test
  void aThreadTiedBeyondWhatItBearsLetsGoAtOnce() {
    ThreadStrength weak = new ThreadStrength(5, days -> 1, 0.1);
    SlippingThread part = new SlippingThread("thread", body.thread, weak, Migration.NONE, NEVER);
    TimeResult result = body.steps(FINE, part).settle();
    assertEquals(0, result.events().get(0).time_s());
    assertTrue(result.events().get(0).words().contains("tears out"), result.toString());
    assertTrue(part.state().gone());
  }

  @Test
  void aBolsterIsTakenOffOnItsDayAndTheSpringGoesBack() {
    TakenOff off = new TakenOff("bolster", List.of(body.thread), 10);
    TimeSteps steps = body.steps(FINE, off);
    steps.settle();
    assertTrue(steps.reach(9.9 * DAY).events().isEmpty());
    assertTrue(body.thread.length(steps.unknowns()) < 9);
    TimeResult result = steps.reach(11 * DAY);
    assertEquals(10 * DAY, result.events().get(0).time_s());
    Check.close(body.thread.length(steps.unknowns()), 10, 1e-6, "nothing pulls any more");
  }

  @Test
  void skinThatClosedAGapFadesToWhatIsLeft() {
    FadingPull skin = new FadingPull(List.of(body.thread), 0.9, 14);
    TimeSteps steps = body.steps(FINE, skin);
    steps.settle();
    steps.reach(365 * DAY);
    double left = 0.1 / TIED * AXIAL;
    double pull = 2 * SPRING * left / (SPRING + left);
    Check.within(
        1e-4, SPRING * (10 - body.thread.length(steps.unknowns())), pull, "two springs in a row");
  }

  @Test
  void anUntiedThreadIsRefused() {
    ElasticThread loose =
        new ElasticThread("loose", List.of(new VertexPoint(0), new FixedPoint(1, 0, 0)), false, 1);
    assertThrows(
        IllegalArgumentException.class,
        () -> new SlippingThread("loose", loose, STRONG, Migration.NONE, NEVER));
    assertFalse(STRONG.bears_n(0) > 5);
  }
}
