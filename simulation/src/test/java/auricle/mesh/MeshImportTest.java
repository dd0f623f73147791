package auricle.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MeshImportTest {
  private final RawMesh.Builder raw = RawMesh.builder(1);
  private final Findings findings = new Findings();

  private Optional<ShellMesh> build() {
    return MeshImport.build(raw.build(), "ear.obj", findings);
  }

  private void grid(double z) {
    for (int v = 0; v < 9; v++) {
      raw.vertex(v % 3, v / 3, z);
    }
  }

  private String told() {
    return findings.list().stream().map(Finding::line).collect(Collectors.joining("\n"));
  }

  @Test
  void quadrilateralsAreCutWithAWarning() {
    grid(0);
    raw.face(0, 1, 4, 3);
    raw.face(1, 2, 5, 4);
    raw.face(3, 4, 7, 6);
    raw.face(4, 5, 8, 7);
    ShellMesh mesh = build().orElseThrow();
    assertEquals(8, mesh.topology().triangleCount());
    assertEquals("ear.obj: 4 quadrilaterals, cut in two each; expected triangles", told());
    assertEquals(4, MeshQuality.of(mesh).area_mm2(), 1e-12);
  }

  @Test
  void aConcaveQuadrilateralIsCutInside() {
    raw.vertex(0, 0, 0);
    raw.vertex(2, 1, 0);
    raw.vertex(0, 2, 0);
    raw.vertex(1.7, 1, 0);
    raw.face(0, 1, 2, 3);
    ShellMesh mesh = build().orElseThrow();
    assertEquals(0.3, MeshQuality.of(mesh).area_mm2(), 1e-12);
  }

  @Test
  void aNonManifoldEdgeNamesItsFaces() {
    grid(0);
    raw.vertex(0.5, 0.5, 1);
    raw.face(0, 1, 4);
    raw.face(0, 4, 3);
    raw.face(4, 0, 9);
    assertTrue(build().isEmpty());
    assertTrue(told().contains("1 non-manifold edges: edge 5-1 of faces 1, 2, 3"), told());
  }

  @Test
  void facesOrientedAgainstEachOtherAreNamed() {
    grid(0);
    raw.face(0, 1, 4);
    raw.face(0, 3, 4);
    assertTrue(build().isEmpty());
    assertTrue(told().contains("oriented against each other: edge 5-1 of faces 1, 2;"), told());
  }

  @Test
  void pinchedVerticesAndPiecesAreToldApart() {
    grid(0);
    raw.face(0, 1, 4);
    raw.face(4, 5, 8);
    assertTrue(build().isEmpty());
    assertTrue(told().contains("1 pinched vertices"), told());
    assertTrue(told().contains("vertex 5 at (1.0, 1.0, 0.0)"), told());
    assertTrue(!told().contains("pieces that do not touch"), told());
  }

  @Test
  void piecesThatLieInTheSamePlaceAreToldToBeMerged() {
    grid(0);
    raw.vertex(0, 0, 0);
    raw.vertex(1, 1, 0);
    raw.face(0, 1, 4);
    raw.face(9, 10, 3);
    assertTrue(build().isEmpty());
    assertTrue(told().contains("2 pieces that do not touch: face 1 with 1 in all"), told());
    assertTrue(told().contains("2 vertices of different pieces lie in the same place"), told());
  }

  @Test
  void degenerateAndDoubledTrianglesAreTold() {
    grid(0);
    raw.face(0, 1, 4);
    raw.face(4, 0, 1);
    raw.face(0, 1, 2);
    raw.face(3, 3, 4);
    assertTrue(build().isEmpty());
    assertTrue(told().contains("2 degenerate triangles: face 3"), told());
    assertTrue(told().contains("1 triangles that are there twice: face 1 and face 2"), told());
  }

  @Test
  void verticesOfNoFaceAreLeftOutAndSetsStayRight() {
    raw.vertex(9, 9, 9);
    grid(0);
    raw.face(1, 2, 5);
    raw.face(1, 5, 4);
    raw.group("second");
    ShellMesh mesh = build().orElseThrow();
    assertEquals(4, mesh.vertexCount());
    assertEquals(List.of(1), mesh.regions().get("second"));
    assertTrue(told().contains("6 vertices left out: vertex 1 at (9.0, 9.0, 9.0)"), told());
    assertTrue(told().contains("and 3 more"), told());
  }

  @Test
  void everyKindOfFaultIsToldInOneGo() {
    grid(Double.NaN);
    raw.face(0, 1);
    raw.face(0, 1, 77);
    assertTrue(build().isEmpty());
    assertEquals(3, findings.list().size(), told());
    assertTrue(told().contains("9 vertices without a finite place: vertex 1"), told());
  }

  @Test
  void aClosedSurfaceAndASingleTriangleAreFine() {
    raw.vertex(0, 0, 0);
    raw.vertex(1, 0, 0);
    raw.vertex(0, 1, 0);
    raw.face(0, 1, 2);
    assertEquals(1, build().orElseThrow().normals()[2], 1e-12);
    raw.vertex(0, 0, 1);
    raw.face(0, 3, 1);
    raw.face(1, 3, 2);
    raw.face(2, 3, 0);
    assertTrue(findings.list().isEmpty(), told());
    assertEquals(4, build().orElseThrow().topology().triangleCount());
    assertTrue(told().contains("6 edges where the surface turns by more than 40 deg: ("), told());
  }
}
