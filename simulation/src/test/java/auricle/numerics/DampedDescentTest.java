package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/** A body that has lost one of its two shapes and is led down to the other. */
class DampedDescentTest {
  private static final double STIFF = 1e6;

  /** Above 2/√27 the right one of two wells is gone. */
  private static final double TILT = 0.5;

  /**
   * ½ S (y − x²)² + ¼ x⁴ − ½ x² + t x: a stiff curved groove, along which there is one minimum
   * left, where x³ − x + t = 0. Whatever it is told to forget, x is counted from a mark that moves
   * along.
   */
  private static final class Groove implements SmoothFunction {
    private final SymmetricPattern pattern =
        new SymmetricPattern(2, new int[] {0, 2, 3}, new int[] {0, 1, 1});
    private double mark;

    @Override
    public int size() {
      return 2;
    }

    @Override
    public SymmetricPattern pattern() {
      return pattern;
    }

    @Override
    public double value(double[] p) {
      double x = mark + p[0];
      double off = p[1] - x * x;
      return STIFF / 2 * off * off + x * x * x * x / 4 - x * x / 2 + TILT * x;
    }

    @Override
    public double derivatives(double[] p, double[] gradient, SymmetricMatrix hessian) {
      double x = mark + p[0];
      double off = p[1] - x * x;
      gradient[0] = -2 * STIFF * off * x + x * x * x - x + TILT;
      gradient[1] = STIFF * off;
      double[] k = hessian.values();
      k[0] = -2 * STIFF * off + 4 * STIFF * x * x + 3 * x * x - 1;
      k[1] = -2 * STIFF * x;
      k[2] = STIFF;
      return value(p);
    }

    @Override
    public void settle(double[] p) {
      mark += p[0];
      p[0] = 0;
    }

    @Override
    public double[] save() {
      return new double[] {mark};
    }

    @Override
    public void restore(double[] saved) {
      mark = saved[0];
    }

    @Override
    public double extent() {
      return 1;
    }

    @Override
    public double forceScale() {
      return 1;
    }

    @Override
    public double valueRoundOff() {
      return 1e-12;
    }
  }

  @Test
  void comesDownToTheShapeThatIsLeft() {
    Groove groove = new Groove();
    double[] p = {1, 1};
    NewtonResult result =
        new DampedDescent(new NewtonMinimiser(groove), NewtonSettings.USUAL, NewtonMonitor.NONE)
            .minimise(p);
    assertEquals(Outcome.CONVERGED, result.outcome(), result.reason());
    double x = groove.mark + p[0];
    Check.within(1e-6, x * x * x, x - TILT, "x³ − x + t = 0, derivative of the function above");
    assertTrue(x < -1, "the one well that is left, at " + x);
  }

  @Test
  void endsWhenToldTo() {
    int[] told = {0};
    NewtonResult result =
        new DampedDescent(
                new NewtonMinimiser(new Groove()), NewtonSettings.USUAL, n -> ++told[0] < 3)
            .minimise(new double[] {1, 1});
    assertEquals(Outcome.CANCELLED, result.outcome());
    assertEquals(3, told[0]);
  }

  @Test
  void derivativesOfTheDragAgree() {
    Damped damped = new Damped(new Groove());
    damped.hold(new double[] {0.2, 0.9}, 1e5);
    SymmetricMatrix k = new SymmetricMatrix(damped.pattern());
    DerivativeCheck check =
        new DerivativeCheck(
            (x, g, h) -> {
              double value = damped.derivatives(x, g, k);
              h[0] = k.values()[0];
              h[1] = k.values()[1];
              h[2] = k.values()[1];
              h[3] = k.values()[2];
              return value;
            },
            new double[] {0.7, 1.3});
    assertTrue(check.gradient(0).relativeError() < 1e-7, check.gradient(0).toString());
    assertTrue(check.hessian(0).relativeError() < 1e-7, check.hessian(0).toString());
  }

  @Test
  void theDragStaysAsItIsWhereUnknownsAreCountedAnew() {
    Damped damped = new Damped(new Groove());
    double[] p = {0.7, 0.5};
    damped.hold(new double[] {0.2, 0.9}, 1e5);
    double before = damped.value(p);
    double[] saved = damped.save();
    double[] there = p.clone();
    damped.settle(p);
    assertEquals(0, p[0]);
    Check.within(1e-12, damped.value(p), before, "the same place, counted otherwise");
    damped.restore(saved);
    assertEquals(before, damped.value(there));
  }
}
