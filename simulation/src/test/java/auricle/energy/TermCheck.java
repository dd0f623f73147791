package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Derivatives of a term against central differences over a scan of step sizes. */
final class TermCheck {
  private TermCheck() {}

  /** Asserts exact derivatives of every contribution at u. */
  static void assertExact(EnergyTerm term, double[] u) {
    for (int i = 0; i < term.count(); i++) {
      assertExact(term, i, u);
    }
  }

  private static void assertExact(EnergyTerm term, int i, double[] u) {
    int n = term.stencil(i).length;
    double[] gradient = new double[n];
    double[] hessian = new double[n * n];
    assertEquals(term.value(i, u), term.derivatives(i, u, gradient, hessian), term.name());
    double gradientSize = largest(gradient);
    double hessianSize = largest(hessian);
    double bestGradient = Double.POSITIVE_INFINITY;
    double bestHessian = Double.POSITIVE_INFINITY;
    for (double h = 1e-2; h > 1e-8; h /= 4) {
      double worstGradient = 0;
      double worstHessian = 0;
      for (int c = 0; c < n; c++) {
        double[] up = moved(u, term.stencil(i)[c], h);
        double[] down = moved(u, term.stencil(i)[c], -h);
        double[] gradientUp = new double[n];
        double[] gradientDown = new double[n];
        double slope =
            (term.derivatives(i, up, gradientUp, new double[n * n])
                    - term.derivatives(i, down, gradientDown, new double[n * n]))
                / (2 * h);
        worstGradient = Math.max(worstGradient, Math.abs(slope - gradient[c]));
        for (int r = 0; r < n; r++) {
          double bend = (gradientUp[r] - gradientDown[r]) / (2 * h);
          worstHessian = Math.max(worstHessian, Math.abs(bend - hessian[r * n + c]));
        }
      }
      bestGradient = Math.min(bestGradient, worstGradient);
      bestHessian = Math.min(bestHessian, worstHessian);
    }
    assertTrue(
        bestGradient <= 1e-7 * gradientSize + 1e-12,
        term.name() + " " + i + ": gradient off by " + bestGradient + " of " + gradientSize);
    assertTrue(
        bestHessian <= 1e-7 * hessianSize + 1e-9,
        term.name() + " " + i + ": Hessian off by " + bestHessian + " of " + hessianSize);
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < r; c++) {
        assertEquals(hessian[r * n + c], hessian[c * n + r], 1e-12 * hessianSize, "symmetry");
      }
    }
  }

  private static double[] moved(double[] u, int unknown, double h) {
    double[] moved = u.clone();
    moved[unknown] += h;
    return moved;
  }

  static double largest(double[] values) {
    double largest = 0;
    for (double v : values) {
      largest = Math.max(largest, Math.abs(v));
    }
    return largest;
  }
}
