package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.numerics.DerivativeCheck;
import java.util.Arrays;

/**
 * What every energy term must keep: exact, symmetric derivatives and indifference to where it is.
 */
public final class EnergyTermContract {
  /** Against the largest entry; differences of right derivatives come to about 1e-9. */
  private static final double EXACT = 1e-7;

  private static final double SYMMETRIC = 1e-12;
  private static final double INVARIANT = 1e-10;

  /** Below these, N and N/mm, an entry is rounding of nothing. */
  private static final double NO_FORCE = 1e-5;

  private static final double NO_STIFFNESS = 1e-2;

  private EnergyTermContract() {}

  /** Asserts exact derivatives of every contribution at u. */
  public static void assertExact(EnergyTerm term, double[] u) {
    for (int i = 0; i < term.count(); i++) {
      assertExact(term, i, u);
    }
  }

  private static void assertExact(EnergyTerm term, int i, double[] u) {
    int[] stencil = term.stencil(i);
    double[] local = Arrays.stream(stencil).mapToDouble(k -> u[k]).toArray();
    double[] all = u.clone();
    double[] g = new double[local.length];
    double value = term.derivatives(i, u, g, new double[local.length * local.length]);
    assertEquals(term.value(i, u), value, name(term, i) + ": value alone and with derivatives");
    double[] alone = new double[local.length];
    assertEquals(value, term.gradient(i, u, alone), name(term, i) + ": value with gradient alone");
    double size = Arrays.stream(g).map(Math::abs).max().orElse(0);
    assertArrayEquals(g, alone, 1e-13 * size, name(term, i) + ": gradient alone");
    DerivativeCheck check =
        new DerivativeCheck(
            (x, gradient, hessian) -> {
              for (int k = 0; k < stencil.length; k++) {
                all[stencil[k]] = x[k];
              }
              return term.derivatives(i, all, gradient, hessian);
            },
            local);
    assertBelow(EXACT, check.gradient(NO_FORCE), term, i);
    assertBelow(EXACT, check.hessian(NO_STIFFNESS), term, i);
    assertBelow(SYMMETRIC, check.symmetry(0), term, i);
  }

  private static void assertBelow(
      double tolerance, DerivativeCheck.Worst worst, EnergyTerm term, int i) {
    assertTrue(worst.relativeError() <= tolerance, () -> name(term, i) + ", worst entry: " + worst);
  }

  private static String name(EnergyTerm term, int i) {
    return "%s, contribution %d".formatted(term.name(), i);
  }

  /**
   * Asserts that a rigid motion changes no contribution by more than 1e-10 of the whole energy.
   *
   * @param here the term and its unknowns
   * @param moved a term of the same kind, whose frames and unknowns have been moved together
   */
  public static void assertInvariant(
      EnergyTerm here, double[] u, EnergyTerm moved, double[] movedUnknowns) {
    double whole = Math.abs(Shapes.energy(here, u));
    assertTrue(whole > 0, here.name() + ": no energy, nothing shown");
    for (int i = 0; i < here.count(); i++) {
      assertEquals(
          here.value(i, u), moved.value(i, movedUnknowns), INVARIANT * whole, name(here, i));
    }
  }
}
