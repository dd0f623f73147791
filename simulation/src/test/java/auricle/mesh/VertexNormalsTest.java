package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.GridOptions.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VertexNormalsTest {
  private static final Around SECTOR = new Around(0, 1.2, false);

  record Case(String name, ParametricSurface surface) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> surfaces() {
    return Stream.of(
        new Case("sphere", Surfaces.sphere(10, 0.7, 1.9, SECTOR)),
        new Case("cylinder", Surfaces.cylinder(10, 12, SECTOR)),
        new Case("cone", Surfaces.cone(10, 4, 9, SECTOR)),
        new Case("twisted strip", Surfaces.twistedStrip(12, 6, 1)),
        new Case(
            "saddle", Surfaces.bilinear(new double[] {0, 0, 3, 12, 0, -3, 12, 10, 3, 0, 10, -3})));
  }

  @ParameterizedTest
  @MethodSource("surfaces")
  void estimatesOnIrregularMeshesAreOfSecondOrderUpToTheBoundary(Case c) {
    for (Pattern pattern : new Pattern[] {Pattern.ONE_WAY, Pattern.UNALIGNED}) {
      double coarse = worst(c.surface(), 10, pattern);
      double fine = worst(c.surface(), 40, pattern);
      double order = Math.log(coarse / fine) / Math.log(4);
      assertTrue(order > 1.6, c + " " + pattern + ": order " + order + ", " + coarse + " " + fine);
    }
  }

  /** Largest angle between the estimated and the true normal, rad; mean over some seeds. */
  private static double worst(ParametricSurface surface, int n, Pattern pattern) {
    double sum = 0;
    for (int seed = 1; seed <= 4; seed++) {
      ShellMesh mesh = GridMesher.mesh(surface, new GridOptions(n, n, pattern, 0.25, seed));
      sum += worst(mesh, VertexNormals.CREASE);
    }
    return sum / 4;
  }

  static double worst(ShellMesh mesh, double crease) {
    double[] found = VertexNormals.estimate(mesh.positions(), mesh.topology(), crease);
    double[] exact = mesh.normals();
    double worst = 0;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double d = 0;
      for (int k = 3 * v; k < 3 * v + 3; k++) {
        d += (found[k] - exact[k]) * (found[k] - exact[k]);
      }
      worst = Math.max(worst, Math.sqrt(d));
    }
    return worst;
  }

  @Test
  void aWholeSphereAndItsPoleAreEstimatedWell() {
    ParametricSurface half = Surfaces.sphere(10, 0, Math.PI / 2, Around.full());
    assertTrue(worst(GridMesher.mesh(half, GridOptions.regular(32, 8)), 0.7) < 0.02);
  }

  @Test
  void aFlatMeshHasItsExactNormals() {
    for (Pattern pattern : Pattern.values()) {
      GridOptions options = new GridOptions(7, 5, pattern, 0.3, 3);
      ShellMesh plate = GridMesher.mesh(Surfaces.parallelogram(7, 4, 1.1), options);
      assertEquals(0, worst(plate, VertexNormals.CREASE), 1e-12, pattern.name());
    }
  }

  @Test
  void aStripOneTriangleWideThatIsBentAlongItselfKeepsTheOrder() {
    ParametricSurface strip = Surfaces.cylinder(10, 1, new Around(0, 3, false));
    for (Pattern pattern : new Pattern[] {Pattern.ONE_WAY, Pattern.ALTERNATING}) {
      double coarse = worst(GridMesher.mesh(strip, new GridOptions(30, 1, pattern, 0.2, 5)), 1);
      double fine = worst(GridMesher.mesh(strip, new GridOptions(120, 1, pattern, 0.2, 5)), 1);
      assertTrue(coarse < 0.02 && fine < coarse / 10, coarse + " " + fine);
    }
  }

  @Test
  void aCreaseIsNotSmoothedOver() {
    // two curved wings that meet in a ridge at y = 0: z = x²/20 + |y|
    int n = 8;
    double[] x = new double[3 * (n + 1) * (n + 1)];
    for (int j = 0; j <= n; j++) {
      for (int i = 0; i <= n; i++) {
        int k = 3 * (j * (n + 1) + i);
        x[k] = i - n / 2.0;
        x[k + 1] = j - n / 2.0;
        x[k + 2] = x[k] * x[k] / 20 + Math.abs(x[k + 1]);
      }
    }
    int[] triangles = new int[6 * n * n];
    for (int q = 0; q < n * n; q++) {
      int a = q / n * (n + 1) + q % n;
      int[] corners = {a, a + 1, a + n + 2, a, a + n + 2, a + n + 1};
      System.arraycopy(corners, 0, triangles, 6 * q, 6);
    }
    double[] found =
        VertexNormals.estimate(x, new Topology((n + 1) * (n + 1), triangles), VertexNormals.CREASE);
    for (int v = 0; v < x.length / 3; v++) {
      double slope = x[3 * v] / 10;
      double across = Math.signum(x[3 * v + 1]);
      double length = Math.sqrt(1 + slope * slope + across * across);
      assertEquals(-slope / length, found[3 * v], 1e-2, "x at " + v);
      assertEquals(-across / length, found[3 * v + 1], 1e-2, "y at " + v);
    }
  }
}
