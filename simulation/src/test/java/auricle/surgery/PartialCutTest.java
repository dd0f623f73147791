package auricle.surgery;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.testing.Check;
import org.junit.jupiter.api.Test;

/** A cut's compliance against the energy of its crack, its turn against the three-layer sheet. */
class PartialCutTest {
  /**
   * V by the energy of the crack: 3π ∫ ξ F² dξ from 0 to x, with the handbook's stress intensity
   * for bending, K = σ √(πa) F(ξ).
   */
  private static double byEnergy(double x) {
    int n = 4000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double xi = x * (i + 0.5) / n;
      double tan = Math.tan(Math.PI * xi / 2);
      double f =
          Math.sqrt(2 / (Math.PI * xi) * tan)
              * (0.923 + 0.199 * Math.pow(1 - Math.sin(Math.PI * xi / 2), 4))
              / Math.cos(Math.PI * xi / 2);
      sum += xi * f * f * x / n;
    }
    return 3 * Math.PI * sum;
  }

  @Test
  void theHingeIsAsCompliantAsTheEnergyOfTheCrackSays() {
    for (double x = 0.1; x < 0.65; x += 0.1) {
      Check.within(
          0.05, new PartialCut(x, 1, 1).rotation(), byEnergy(x), "energy integral of the crack");
    }
  }

  @Test
  void aFaceTakenAwayThroughoutTurnsTheSheetAsTheThreeLayersDo() {
    String source = "three layers in closed form, computed";
    for (double r = 0.05; r < 0.31; r += 0.05) {
      double closed = 6 * r * (1 - 2 * r) / Math.pow(1 - r, 3);
      Check.within(1e-12, new PartialCut(r, 1, 1).fullTurn(r, 1), closed, source);
    }
  }

  @Test
  void theTurnGrowsWithDepthUpToHalfTheThickness() {
    double last = 0;
    for (double x = 0.05; x <= 0.5; x += 0.05) {
      double turn = new PartialCut(x, 1, 2).turn(0.15, 0.04);
      assertTrue(turn > last, "at depth " + x + " (ten Koppel 2003, seen: order only)");
      last = turn;
    }
  }

  @Test
  void deeperOrCloserCutsAreMoreCompliant() {
    assertTrue(new PartialCut(0.5, 1, 2).compliance() > new PartialCut(0.4, 1, 2).compliance());
    assertTrue(new PartialCut(0.5, 1, 1).compliance() > new PartialCut(0.5, 1, 2).compliance());
  }

  @Test
  void aCutThroughIsNoPartialCut() {
    assertThrows(IllegalArgumentException.class, () -> new PartialCut(0.9, 1, 2));
  }
}
