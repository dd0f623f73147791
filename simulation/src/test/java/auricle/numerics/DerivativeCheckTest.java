package auricle.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DerivativeCheckTest {
  private static final double[] X = {0.7, -1.3};

  /** f = x² y + sin y, with one entry of the Hessian off by the given amount. */
  private static DerivativeCheck check(double mistake) {
    return new DerivativeCheck(
        (x, g, h) -> {
          g[0] = 2 * x[0] * x[1];
          g[1] = x[0] * x[0] + Math.cos(x[1]);
          h[0] = 2 * x[1];
          h[1] = 2 * x[0] + mistake;
          h[2] = 2 * x[0];
          h[3] = -Math.sin(x[1]);
          return x[0] * x[0] * x[1] + Math.sin(x[1]);
        },
        X);
  }

  @Test
  void rightDerivativesAgree() {
    assertTrue(check(0).gradient(0).relativeError() < 1e-9, check(0).gradient(0).toString());
    assertTrue(check(0).hessian(0).relativeError() < 1e-9, check(0).hessian(0).toString());
    assertEquals(0, check(0).symmetry(0).relativeError());
  }

  @Test
  void aWrongEntryIsNamedWithBothValues() {
    DerivativeCheck.Worst worst = check(1e-5).hessian(0);
    assertEquals(0, worst.row());
    assertEquals(1, worst.column());
    assertEquals(1.4 + 1e-5, worst.exact());
    assertEquals(1.4, worst.difference(), 1e-8);
    assertEquals(1e-5 / 2.6, worst.relativeError(), 1e-8);
    assertEquals(1, check(1e-5).symmetry(0).row());
  }
}
