package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.energy.EnergyTerm;
import auricle.mesh.MovingFrame;
import auricle.numerics.NewtonMinimiser;
import auricle.numerics.NewtonResult;
import auricle.numerics.NewtonSettings;
import auricle.numerics.Outcome;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutcomeTest {
  private static final double[] LINE = {0, 0, 0, 1, 0, 0, 2, 0, 0};

  /**
   * Two bars in line between fixed ends: nothing but tension, of which there is none, holds y, z.
   */
  private static TotalEnergy bars(Supports.Builder supports, EnergyTerm... more) {
    List<EnergyTerm> terms = new java.util.ArrayList<>(List.of(more));
    terms.add(new Bars(10, LINE, 0, 1, 1, 2));
    return new TotalEnergy(terms, supports.build(), MovingFrame.NONE, LINE, 1);
  }

  private static Supports.Builder fixed(int... unknowns) {
    Supports.Builder supports = new Supports.Builder(9, 9);
    Arrays.stream(unknowns).forEach(supports::fix);
    return supports;
  }

  private static NewtonResult solve(TotalEnergy energy) {
    return new NewtonMinimiser(energy)
        .minimise(energy.free(), NewtonSettings.USUAL, iteration -> true);
  }

  @Test
  void aMechanismAtRestIsStalledForLackOfSupports() {
    NewtonResult result = solve(bars(fixed(0, 1, 2, 4, 5, 7)));
    assertEquals(Outcome.STALLED, result.outcome());
    assertTrue(result.reason().contains("z of vertex 2"), result.reason());
    assertTrue(result.reason().contains("supports are missing"), result.reason());
  }

  @Test
  void aPulledMechanismDivergesForLackOfSupports() {
    TotalEnergy energy = bars(fixed(1, 2, 4, 5, 7, 8), new Pull(6, 1));
    energy.setLoadFactor(1);
    NewtonResult result = solve(energy);
    assertEquals(Outcome.DIVERGED, result.outcome());
    assertTrue(result.reason().contains("supports are missing"), result.reason());
  }

  @Test
  void anEnergyThatIsNotANumberDiverges() {
    EnergyTerm broken = new Pull(3, Double.NaN);
    NewtonResult result = solve(bars(fixed(0, 1, 2, 4, 5, 6, 7, 8), broken));
    assertEquals(Outcome.DIVERGED, result.outcome());
    assertTrue(result.reason().contains("not finite"), result.reason());
  }

  @Test
  void cancellingKeepsTheLastStateAtRest() {
    BentChain chain = new BentChain(20, 0.5, 4);
    TotalEnergy energy = chain.loaded(1e5, 0.1);
    double[] rest = energy.unknowns().clone();
    LoadPath path =
        new LoadSteps(energy, StepSettings.USUAL, (lambda, iteration) -> lambda == 0).run(1);
    assertEquals(Outcome.CANCELLED, path.outcome());
    assertTrue(path.reason().contains("cancelled"), path.reason());
    assertEquals(0, energy.loadFactor());
    assertArrayEquals(rest, energy.unknowns());
  }

  @Test
  void aStraightColumnBeyondItsBucklingLoadGivesWayTheSameWayEveryTime() {
    double[] first = buckled();
    assertTrue(Math.abs(first[1 + 3 * 11]) > 1, "bowed out");
    assertArrayEquals(first, buckled());
  }

  private static double[] buckled() {
    BentChain chain = new BentChain(20, 0.5, 4);
    TotalEnergy energy = chain.loaded(1e5, 0, new Pull(chain.tip() - 1, -0.1));
    LoadPath path = new LoadSteps(energy, StepSettings.USUAL, StepMonitor.NONE).run(1);
    assertEquals(Outcome.CONVERGED, path.outcome(), path.reason());
    assertEquals(0, path.last().solution().negativePivots());
    assertEquals(PathEvent.Kind.SNAP, path.events().get(0).kind());
    return path.last().unknowns();
  }
}
