package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.GridOptions.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class RefinementTest {
  private static final Around QUARTER = new Around(0, Math.PI / 2, false);

  @Test
  void onASphereEveryPlaceAndNormalStaysExact() {
    ParametricSurface octant = Surfaces.sphere(3, Math.PI / 2, 0, QUARTER);
    ShellMesh mesh = GridMesher.mesh(octant, new GridOptions(3, 3, Pattern.ALTERNATING, 0.2, 5));
    mesh = Refinement.refine(Refinement.refine(mesh));
    double[] x = mesh.positions();
    double[] n = mesh.normals();
    for (int i = 0; i < x.length; i++) {
      assertEquals(x[i], 3 * n[i], 1e-12);
    }
  }

  @Test
  void onACylinderTheErrorFallsWithTheFourthPowerOfTheMesh() {
    double coarse = radialError(6);
    double fine = radialError(12);
    double order = Math.log(coarse / fine) / Math.log(2);
    assertTrue(order > 3.8, "order " + order + " from " + coarse + " and " + fine);
  }

  private static double radialError(int divisions) {
    ShellMesh mesh =
        Refinement.refine(
            GridMesher.mesh(
                Surfaces.cylinder(2, 3, QUARTER), GridOptions.regular(divisions, divisions)));
    double worst = 0;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double r = Math.hypot(mesh.position(v, 0), mesh.position(v, 1));
      worst = Math.max(worst, Math.abs(r - 2));
    }
    return worst;
  }

  @Test
  void aFlatMeshIsCutLikeOneOfTwiceTheDivisions() {
    ParametricSurface plate = Surfaces.parallelogram(4, 3, Math.PI / 3);
    GridOptions coarse = new GridOptions(4, 3, Pattern.ONE_WAY, 0, 1);
    GridOptions fine = new GridOptions(8, 6, Pattern.ONE_WAY, 0, 1);
    ShellMesh refined = Refinement.refine(GridMesher.mesh(plate, coarse));
    ShellMesh expected = GridMesher.mesh(plate, fine);
    assertEquals(triangles(expected), triangles(refined));
    for (String name : expected.vertexSets().keySet()) {
      assertEquals(places(expected, name), places(refined, name), name);
    }
  }

  /** Corner places of all triangles, each from its lowest corner on, in order. */
  private static TreeSet<String> triangles(ShellMesh mesh) {
    TreeSet<String> all = new TreeSet<>();
    for (int t = 0; t < mesh.topology().triangleCount(); t++) {
      List<String> corners = new ArrayList<>();
      for (int c = 0; c < 3; c++) {
        corners.add(place(mesh, mesh.topology().vertex(t, c)));
      }
      java.util.Collections.rotate(corners, -corners.indexOf(java.util.Collections.min(corners)));
      all.add(corners.toString());
    }
    return all;
  }

  private static TreeSet<String> places(ShellMesh mesh, String set) {
    TreeSet<String> all = new TreeSet<>();
    mesh.vertexSet(set).orElseThrow().forEach(v -> all.add(place(mesh, v)));
    return all;
  }

  private static String place(ShellMesh mesh, int v) {
    // rounded to a multiple, without a sign of zero
    return List.of(
            Math.round(1e9 * mesh.position(v, 0)),
            Math.round(1e9 * mesh.position(v, 1)),
            Math.round(1e9 * mesh.position(v, 2)))
        .toString();
  }

  @Test
  void regionsKeepTheirSurfaceAndTheRimIsNotShortcut() {
    ShellMesh grid =
        GridMesher.mesh(Surfaces.parallelogram(2, 2, Math.PI / 2), GridOptions.regular(2, 2));
    List<Integer> rim = new ArrayList<>();
    for (String side : List.of("start", "end", "side_low", "side_high")) {
      rim.addAll(grid.vertexSet(side).orElseThrow());
    }
    ShellMesh mesh =
        ShellMesh.builder(grid.positions(), grid.normals(), grid.topology())
            .vertexSet("rim", rim)
            .region("two", List.of(1, 2))
            .build();
    ShellMesh refined = Refinement.refine(mesh);
    assertEquals(List.of(4, 5, 6, 7, 8, 9, 10, 11), refined.regions().get("two"));
    for (int v : refined.vertexSet("rim").orElseThrow()) {
      double fromMiddle =
          Math.max(Math.abs(refined.position(v, 0) - 1), Math.abs(refined.position(v, 1) - 1));
      assertEquals(1, fromMiddle, 1e-12);
    }
    assertEquals(16, refined.vertexSet("rim").orElseThrow().size());
  }
}
