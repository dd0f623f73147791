package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.GridOptions.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Even rows and unaligned meshes on surfaces that close, end in a point, or both. */
class PatternsTest {
  private static final Around QUARTER = new Around(0, Math.PI / 2, false);
  private static final Around HALF = new Around(0.3, 0.3 + Math.PI, false);

  record Case(String name, ParametricSurface surface, int around, int along) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> surfaces() {
    return Stream.of(
        new Case("disc", Surfaces.annulus(0, 3, Around.full()), 48, 8),
        new Case("quarter disc", Surfaces.annulus(0, 3, QUARTER), 16, 8),
        new Case("half disc", Surfaces.annulus(0, 3, HALF), 24, 8),
        new Case("dome", Surfaces.sphere(2, Math.PI / 2, 0, Around.full()), 36, 9),
        new Case("cap from its pole", Surfaces.sphere(2, 0, 1, Around.full()), 36, 6),
        new Case("quarter dome", Surfaces.sphere(2, Math.PI / 2, 0, QUARTER), 12, 9),
        new Case("cone", Surfaces.cone(3, 0, 4, Around.full()), 40, 10),
        new Case("cone sector", Surfaces.cone(0, 3, 4, QUARTER), 10, 10),
        new Case("tube", Surfaces.cylinder(2, 5, Around.full()), 24, 10),
        new Case("ring", Surfaces.annulus(1, 3, Around.full()), 24, 5),
        new Case("sector of a ring", Surfaces.annulus(1, 3, QUARTER), 9, 5));
  }

  @ParameterizedTest
  @MethodSource("surfaces")
  void everyTriangleFacesTheNormalAndNoneIsLeftOut(Case c) {
    for (Pattern pattern : new Pattern[] {Pattern.EVEN_ROWS, Pattern.UNALIGNED}) {
      for (int seed = 0; seed < 12; seed++) {
        double jitter = seed == 0 ? 0.01 : 0.4;
        ShellMesh mesh =
            GridMesher.mesh(
                c.surface(), new GridOptions(c.around(), c.along(), pattern, jitter, seed));
        String what = pattern + " seed " + seed;
        assertFacing(mesh, what);
        assertRims(c, mesh, what);
      }
    }
  }

  private static void assertFacing(ShellMesh mesh, String what) {
    double[] x = mesh.positions();
    double[] n = mesh.normals();
    for (int t = 0; t < mesh.topology().triangleCount(); t++) {
      int a = 3 * mesh.topology().vertex(t, 0);
      int b = 3 * mesh.topology().vertex(t, 1);
      int c = 3 * mesh.topology().vertex(t, 2);
      double[] origin = Vectors.at(x, a);
      double[] facing =
          Vectors.cross(
              Vectors.subtract(Vectors.at(x, b), origin),
              Vectors.subtract(Vectors.at(x, c), origin));
      double[] mean =
          Vectors.add(Vectors.add(Vectors.at(n, a), 1, Vectors.at(n, b)), 1, Vectors.at(n, c));
      assertTrue(Vectors.dot(facing, mean) > 0, what + " triangle " + t);
    }
  }

  /** Boundary edges are those of the rows and sides; V − E + F is that of a disc or a tube. */
  private static void assertRims(Case c, ShellMesh mesh, String what) {
    ParametricSurface s = c.surface();
    int rim = 0;
    for (int e = 0; e < mesh.topology().edgeCount(); e++) {
      rim += mesh.topology().isBoundary(e) ? 1 : 0;
    }
    int expected = steps(s, mesh, "side_low") + steps(s, mesh, "side_high");
    expected += s.closed() ? 0 : 2 * c.along();
    assertEquals(expected, rim, what);
    boolean hollow = s.closed() && !s.pointAtLow() && !s.pointAtHigh();
    int euler = mesh.vertexCount() - mesh.topology().edgeCount() + mesh.topology().triangleCount();
    assertEquals(hollow ? 0 : 1, euler, what);
  }

  private static int steps(ParametricSurface surface, ShellMesh mesh, String side) {
    int size = mesh.vertexSet(side).orElseThrow().size();
    return surface.closed() && size > 1 ? size : size - 1;
  }

  @Test
  void evenRowsOfADiscHaveEvenTriangles() {
    ParametricSurface disc = Surfaces.annulus(0, 5, Around.full());
    MeshQuality even =
        MeshQuality.of(GridMesher.mesh(disc, new GridOptions(60, 10, Pattern.EVEN_ROWS, 0, 1)));
    assertTrue(even.smallestAngle_deg() > 42, even::toString);
    assertTrue(even.largestAngle_deg() < 92, even::toString);
  }

  @Test
  void theTipOfAConeHasItsNormalAlongTheAxis() {
    ShellMesh cone = GridMesher.mesh(Surfaces.cone(3, 0, 4, QUARTER), GridOptions.regular(4, 4));
    int tip = cone.vertexSet("side_high").orElseThrow().get(0);
    assertArrayEquals(new double[] {0, 0, 1}, Vectors.at(cone.normals(), 3 * tip), 0);
  }

  @Test
  void whatHasNoPlaneMapIsRefused() {
    GridOptions options = new GridOptions(12, 6, Pattern.UNALIGNED, 0.2, 1);
    ParametricSurface ball = Surfaces.sphere(1, 0, Math.PI, Around.full());
    ParametricSurface wide = Surfaces.annulus(0, 1, new Around(0, 4, false));
    assertThrows(IllegalArgumentException.class, () -> GridMesher.mesh(ball, options));
    assertThrows(IllegalArgumentException.class, () -> GridMesher.mesh(wide, options));
  }
}
