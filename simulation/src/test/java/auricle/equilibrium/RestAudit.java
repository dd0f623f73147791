package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.SymmetricMatrix;
import java.util.Arrays;

/**
 * Whether a state that is said to be at rest is: forces evaluated anew, in a new model, against the
 * tolerance as it is documented.
 */
final class RestAudit {
  private static final double RELATIVE = 1e-8;
  private static final double ROUNDING = 32 * Math.ulp(1.0);

  private RestAudit() {}

  static void assertAtRest(TotalEnergy anew, EquilibriumState state, String model) {
    double[] u = state.unknowns();
    assertTrue(Arrays.stream(u).allMatch(Double::isFinite), model + ": unknowns are numbers");
    anew.restore(whole(anew, state));
    double[] x = anew.free();
    double[] gradient = new double[x.length];
    SymmetricMatrix hessian = new SymmetricMatrix(anew.pattern());
    anew.derivatives(x, gradient, hessian);
    double allowed =
        Math.max(RELATIVE * anew.forceScale(), ROUNDING * roundOff(anew, hessian, x)) * 1.001;
    double residual = 0;
    for (int k = 0; k < x.length; k++) {
      double r = Math.abs(gradient[k]) / anew.unit(k);
      residual = r <= residual ? residual : r;
    }
    assertTrue(
        residual <= allowed,
        "%s at load factor %s: residual %.3g, allowed %.3g, said: %s"
            .formatted(model, state.loadFactor(), residual, allowed, state.solution().reason()));
  }

  /** The state as the energy saves it. */
  private static double[] whole(TotalEnergy anew, EquilibriumState state) {
    double[] saved = anew.save();
    double[] u = state.unknowns();
    double[] frames = state.frames();
    saved[0] = state.loadFactor();
    saved[1] = 0;
    System.arraycopy(u, 0, saved, 2, u.length);
    System.arraycopy(frames, 0, saved, 2 + u.length, frames.length);
    return saved;
  }

  /** max_i Σ_j |K_ij x_j| / unit_i. */
  private static double roundOff(TotalEnergy energy, SymmetricMatrix k, double[] x) {
    double[] sum = new double[x.length];
    int[] start = k.pattern().columnStart();
    for (int j = 0; j < x.length; j++) {
      for (int p = start[j]; p < start[j + 1]; p++) {
        int i = k.pattern().rowIndex()[p];
        sum[i] += Math.abs(k.values()[p] * x[j]);
        sum[j] += i == j ? 0 : Math.abs(k.values()[p] * x[i]);
      }
    }
    double largest = 0;
    for (int i = 0; i < x.length; i++) {
      largest = Math.max(largest, sum[i] / energy.unit(i));
    }
    return largest;
  }
}
