package auricle.equilibrium;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.energy.EnergyTerm;
import auricle.energy.ShellTerms;
import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Around;
import auricle.mesh.Directors;
import auricle.mesh.GridMesher;
import auricle.mesh.GridOptions;
import auricle.mesh.RestShape;
import auricle.mesh.ShellMesh;
import auricle.mesh.Surfaces;
import auricle.numerics.SymmetricMatrix;
import auricle.numerics.Workers;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums that several threads make are those that one makes, to the last bit. */
class SharedAssemblyTest {
  /** What an evaluation gives, one array after the other. */
  private record Evaluated(List<double[]> parts) {}

  private static Evaluated evaluate(int threads) throws Exception {
    return Workers.of(threads).within(SharedAssemblyTest::evaluate);
  }

  private static Evaluated evaluate() {
    GridOptions options = new GridOptions(16, 24, GridOptions.Pattern.values()[0], 0.2, 5);
    ShellMesh mesh = GridMesher.mesh(Surfaces.cylinder(20, 30, new Around(0, 2, false)), options);
    Directors directors = mesh.directors();
    RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), directors);
    SectionField section = SectionField.uniform(Section.isotropic(3, 0.3, 0.8));
    List<EnergyTerm> terms = List.copyOf(ShellTerms.of(rest, directors, section));
    Supports.Builder supports =
        new Supports.Builder(mesh.unknowns().length, mesh.topology().unknowns().director(0));
    for (int i = 0; i < 60; i++) {
      supports.fix(i);
    }
    TotalEnergy energy =
        new TotalEnergy(terms, supports.build(), directors, mesh.unknowns(), mesh.meanEdge());
    return moved(energy);
  }

  /** Two steps, so that forces are foreseen. */
  private static Evaluated moved(TotalEnergy energy) {
    double[] x = energy.free();
    double[] gradient = new double[energy.size()];
    SymmetricMatrix hessian = new SymmetricMatrix(energy.pattern());
    for (int step = 0; step < 2; step++) {
      for (int i = 0; i < x.length; i++) {
        x[i] += 0.02 * Math.sin(3.7 * i + step);
      }
      energy.settle(x);
      energy.derivatives(x, gradient, hessian);
    }
    double[] alone = new double[energy.size()];
    double[] sums = {energy.value(x), energy.gradient(x, alone), energy.forceScale()};
    return new Evaluated(
        List.of(sums, gradient, alone, hessian.values().clone(), energy.forces().clone()));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void anyNumberOfThreadsGivesTheSameBits(int threads) throws Exception {
    Evaluated alone = evaluate(1);
    Evaluated together = evaluate(threads);
    assertTrue(alone.parts().get(0)[0] > 0);
    for (int k = 0; k < alone.parts().size(); k++) {
      assertArrayEquals(alone.parts().get(k), together.parts().get(k), 0, "part " + k);
    }
  }

  @Test
  void sharesOfAStripAreEvenAndMeetAtOnePlace() {
    int[][] chain = new int[99][];
    Arrays.setAll(chain, i -> new int[] {i, i + 1});
    int[] owner = UnknownShares.of(100, chain, 2);
    assertEquals(50, Arrays.stream(owner).filter(o -> o == 0).count());
    int borders = 0;
    for (int[] link : chain) {
      borders += owner[link[0]] == owner[link[1]] ? 0 : 1;
    }
    assertEquals(1, borders);
  }
}
