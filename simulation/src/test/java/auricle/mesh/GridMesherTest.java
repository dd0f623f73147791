package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.GridOptions.Pattern;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class GridMesherTest {
  private static final Around QUARTER = new Around(0, Math.PI / 2, false);

  record Case(String name, ParametricSurface surface, double area) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> surfaces() {
    return Stream.of(
        new Case("parallelogram", Surfaces.parallelogram(3, 2, Math.PI / 6), 3.0),
        new Case("cylinder sector", Surfaces.cylinder(2, 5, QUARTER), 5 * Math.PI),
        new Case("tube", Surfaces.cylinder(2, 5, Around.full()), 20 * Math.PI),
        new Case(
            "slit tube", Surfaces.cylinder(2, 5, new Around(0, 2 * Math.PI, true)), 20 * Math.PI),
        new Case("half sphere", Surfaces.sphere(2, Math.PI / 2, 0, Around.full()), 8 * Math.PI),
        new Case("ring", Surfaces.annulus(1, 3, new Around(0, 2 * Math.PI, true)), 8 * Math.PI),
        new Case("disc", Surfaces.annulus(0, 3, Around.full()), 9 * Math.PI),
        new Case("cone", Surfaces.cone(3, 0, 4, Around.full()), 15 * Math.PI),
        new Case(
            "profile",
            new Profile(List.of(new Profile.Piece(2, 0), new Profile.Piece(3, 1.5)), 4),
            20),
        new Case(
            "flat quadrilateral",
            Surfaces.bilinear(new double[] {0, 0, 0, 2, 0, 0, 3, 2, 0, 0, 2, 0}),
            5));
  }

  @ParameterizedTest
  @MethodSource("surfaces")
  void trianglesCoverTheSurfaceAndFaceItsNormal(Case c) {
    for (Pattern pattern : new Pattern[] {Pattern.ONE_WAY, Pattern.ALTERNATING, Pattern.CROSSED}) {
      ShellMesh mesh = GridMesher.mesh(c.surface(), new GridOptions(96, 40, pattern, 0.2, 7));
      assertEquals(c.area(), facingArea(mesh), 3e-3 * c.area(), pattern.name());
    }
  }

  @ParameterizedTest
  @EnumSource(Pattern.class)
  void strongJitterLeavesNoTriangleTurnedOver(Pattern pattern) {
    for (long seed = 0; seed < 20; seed++) {
      GridOptions options = new GridOptions(12, 9, pattern, 0.3, seed);
      ShellMesh mesh = GridMesher.mesh(Surfaces.parallelogram(4, 3, Math.PI / 2), options);
      assertEquals(12, facingArea(mesh), 1e-9);
      RestShape rest = RestShape.of(mesh.topology(), mesh.unknowns(), mesh.directors());
      double sum = 0;
      for (int t = 0; t < mesh.topology().triangleCount(); t++) {
        sum += rest.plate(t).area();
      }
      // the sum of unsigned areas is larger if any triangle is turned over
      assertEquals(12, sum, 1e-9);
    }
  }

  @Test
  void namedSetsAreTheSidesAndCorners() {
    ShellMesh mesh =
        GridMesher.mesh(Surfaces.parallelogram(4, 3, Math.PI / 2), GridOptions.regular(4, 3));
    assertEquals(4, mesh.vertexSet("start").orElseThrow().size());
    assertEquals(5, mesh.vertexSet("side_high").orElseThrow().size());
    int corner = mesh.vertexSet("end_high").orElseThrow().get(0);
    assertEquals(4, mesh.position(corner, 0), 1e-12);
    assertEquals(3, mesh.position(corner, 1), 1e-12);
  }

  @Test
  void aClosedTubeHasTwoBoundariesAndASlitOneHasLips() {
    ShellMesh tube =
        GridMesher.mesh(Surfaces.cylinder(1, 2, Around.full()), GridOptions.regular(12, 4));
    ShellMesh slit =
        GridMesher.mesh(
            Surfaces.cylinder(1, 2, new Around(0, 2 * Math.PI, true)), GridOptions.regular(12, 4));
    assertEquals(24, boundary(tube));
    assertEquals(24 + 8, boundary(slit));
    assertTrue(tube.vertexSet("start").isEmpty());
  }

  @Test
  void theSameSeedGivesTheSameMesh() {
    GridOptions options = new GridOptions(6, 6, Pattern.UNALIGNED, 0.3, 3);
    ParametricSurface square = Surfaces.parallelogram(1, 1, Math.PI / 2);
    ShellMesh one = GridMesher.mesh(square, options);
    ShellMesh two = GridMesher.mesh(square, options);
    assertTrue(java.util.Arrays.equals(one.positions(), two.positions()));
    assertTrue(java.util.Arrays.equals(one.topology().triangles(), two.topology().triangles()));
  }

  private static int boundary(ShellMesh mesh) {
    int count = 0;
    for (int e = 0; e < mesh.topology().edgeCount(); e++) {
      count += mesh.topology().isBoundary(e) ? 1 : 0;
    }
    return count;
  }

  /** Area of the triangles seen along the mean normal of their corners. */
  private static double facingArea(ShellMesh mesh) {
    int[] t = mesh.topology().triangles();
    double[] x = mesh.positions();
    double[] n = mesh.normals();
    double sum = 0;
    for (int i = 0; i < t.length; i += 3) {
      int a = 3 * t[i];
      int b = 3 * t[i + 1];
      int c = 3 * t[i + 2];
      for (int k = 0; k < 3; k++) {
        int l = (k + 1) % 3;
        int m = (k + 2) % 3;
        double area =
            (x[b + l] - x[a + l]) * (x[c + m] - x[a + m])
                - (x[b + m] - x[a + m]) * (x[c + l] - x[a + l]);
        sum += area * (n[a + k] + n[b + k] + n[c + k]) / 6;
      }
    }
    return sum;
  }
}
