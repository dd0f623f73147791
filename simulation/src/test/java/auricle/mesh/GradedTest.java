package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class GradedTest {
  private static final ParametricSurface PLATE = Surfaces.parallelogram(5, 3, Math.PI / 2);

  @Test
  void cellsFormAGeometricProgressionBetweenTheSameSides() {
    ShellMesh mesh = GridMesher.mesh(new Graded(PLATE, 16, 1), GridOptions.regular(4, 1));
    double[] x = new double[5];
    for (int i = 0; i <= 4; i++) {
      x[i] = mesh.position(mesh.vertexSet("side_low").orElseThrow().get(i), 0);
    }
    assertEquals(0, x[0], 0);
    assertEquals(5, x[4], 1e-12);
    for (int i = 0; i < 3; i++) {
      // the density grows 16-fold over four cells, twofold over each
      assertEquals(2, (x[i + 2] - x[i + 1]) / (x[i + 1] - x[i]), 1e-12);
    }
  }

  @Test
  void aRatioOfOneChangesNothing() {
    GridOptions options = new GridOptions(6, 4, GridOptions.Pattern.UNALIGNED, 0.3, 2);
    ShellMesh plain = GridMesher.mesh(PLATE, options);
    ShellMesh graded = GridMesher.mesh(new Graded(PLATE, 1, 1), options);
    org.junit.jupiter.api.Assertions.assertArrayEquals(plain.positions(), graded.positions(), 0);
  }

  @Test
  void impossibleRatiosAreRefused() {
    ParametricSurface tube = Surfaces.cylinder(1, 2, Around.full());
    assertThrows(IllegalArgumentException.class, () -> new Graded(tube, 2, 1));
    assertThrows(IllegalArgumentException.class, () -> new Graded(PLATE, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> new Graded(PLATE, Double.NaN, 1));
  }
}
