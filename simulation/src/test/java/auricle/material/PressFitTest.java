package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.Finding;
import auricle.testing.Check;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An ear as two springs in a row: the bedding keeps its stiffness, the section is scaled. */
class PressFitTest {
  private static final double BEDDING = 0.05;
  private static final double SECTION = 0.02;
  private static final double DEPTH = 8;

  private static double force(Tissue tissue) {
    double scale = tissue.layers("helix").core().modulus_mpa() / soft();
    return DEPTH / (1 / BEDDING + 1 / (scale * SECTION));
  }

  private static double soft() {
    return Tissue.standard().layers("helix").core().modulus_mpa();
  }

  private static PressFit fit(double force_n) {
    return PressFit.of(Tissue.standard(), DEPTH, force_n, PressFitTest::force);
  }

  @Test
  void theModelMeetsThePress() {
    double scale = 0.7;
    double force = DEPTH / (1 / BEDDING + 1 / (scale * SECTION));
    PressFit fit = fit(force);
    assertTrue(fit.met());
    Check.within(2e-3, fit.scale(), scale, "springs in a row, closed form");
    Check.within(1e-3, fit.modelForce_n(), force, "the press");
    Check.within(2e-3, fit.tissue().layers("helix").core().modulus_mpa() / soft(), scale, "scaled");
    assertTrue(fit.evaluations() <= 10, "evaluations: " + fit.evaluations());
  }

  @Test
  void aPressWithinThePublishedRangeIsTakenWithoutAWord() {
    assertEquals(List.of(), fit(0.015 * DEPTH).findings());
  }

  @Test
  void aPressOutsideThePublishedRangeIsTakenWithAWarning() {
    PressFit fit = fit(0.03 * DEPTH);
    assertTrue(fit.met());
    Finding finding = fit.findings().get(0);
    assertFalse(finding.isError());
    assertTrue(finding.line().contains("0.0300 N/mm"), finding.line());
    assertTrue(finding.line().contains("0.011 to 0.019 N/mm"), finding.line());
  }

  @Test
  void aPressThatNoStiffnessMeetsIsRefused() {
    PressFit fit = fit(2 * BEDDING * DEPTH);
    assertFalse(fit.met());
    assertEquals(1, fit.scale());
  }

  @Test
  void aModelWithoutEquilibriumMeetsNothing() {
    assertFalse(PressFit.of(Tissue.standard(), DEPTH, 0.1, t -> Double.NaN).met());
  }
}
