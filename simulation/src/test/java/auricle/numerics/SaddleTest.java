package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/**
 * A saddle that no straight motion leads away from: the value falls along a curve whose stiff
 * neighbourhood, like that of a thin shell that turns, hides it from straight lines.
 */
class SaddleTest {
  private static final double STIFF = 1e12;
  private static final double SOFT = 1e-2;

  /** ½ S (y − x²)² − ½ e x² + ¼ x⁴: least at x² = e, y = x², where it is −e²/4. */
  private static final class Bend implements SmoothFunction {
    private final SymmetricPattern pattern =
        new SymmetricPattern(2, new int[] {0, 2, 3}, new int[] {0, 1, 1});

    @Override
    public int size() {
      return 2;
    }

    @Override
    public SymmetricPattern pattern() {
      return pattern;
    }

    @Override
    public double value(double[] x) {
      double square = x[0] * x[0];
      double off = x[1] - square;
      return STIFF / 2 * off * off - SOFT / 2 * square + square * square / 4;
    }

    @Override
    public double derivatives(double[] x, double[] gradient, SymmetricMatrix hessian) {
      double square = x[0] * x[0];
      double off = x[1] - square;
      gradient[0] = -2 * STIFF * off * x[0] - SOFT * x[0] + square * x[0];
      gradient[1] = STIFF * off;
      double[] k = hessian.values();
      k[0] = -2 * STIFF * off + 4 * STIFF * square - SOFT + 3 * square;
      k[1] = -2 * STIFF * x[0];
      k[2] = STIFF;
      return value(x);
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
      return 1e-16;
    }
  }

  @Test
  void isLeftByALeapWhereNoSmallMotionLeadsAway() {
    double[] x = {0, 0};
    NewtonResult result =
        new NewtonMinimiser(new Bend()).minimise(x, NewtonSettings.USUAL, NewtonMonitor.NONE);
    assertEquals(Outcome.CONVERGED, result.outcome(), result.reason());
    // a step of 1e-6 of the extent may be left: 1e-5 of x, twice that of its square
    Check.within(2e-5, x[0] * x[0], SOFT, "x² = e, closed form of the function above");
  }
}
