package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.MeshQuality;
import auricle.mesh.Topology;
import auricle.mesh.VertexNormals;
import java.util.List;
import org.junit.jupiter.api.Test;

class AuricleTest {
  private static final Auricle NORMAL =
      Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);

  @Test
  void thePlanningMeshHasSixHundredToAThousandVertices() {
    int vertices = NORMAL.mesh().vertexCount();
    assertTrue(vertices >= 600 && vertices <= 1000, "vertices: " + vertices);
  }

  @Test
  void theMeshIsOneDiscWhoseBoundaryIsTheFreeEdge() {
    Topology t = NORMAL.mesh().topology();
    assertEquals(1, t.vertexCount() - t.edgeCount() + t.triangleCount());
    int boundary = 0;
    for (int e = 0; e < t.edgeCount(); e++) {
      boundary += t.isBoundary(e) ? 1 : 0;
    }
    assertEquals(NORMAL.mesh().vertexSet(Auricle.RIM).orElseThrow().size(), boundary);
  }

  @Test
  void theSmoothSurfaceTurnsLittleAlongEveryEdge() {
    double turn = new MeshFaults(NORMAL.mesh()).greatestTurn();
    assertTrue(turn < 0.65, "turn: " + turn);
  }

  @Test
  void noTriangleIsASliver() {
    double angle = MeshQuality.of(NORMAL.mesh()).smallestAngle_deg();
    assertTrue(angle > 6, "smallest angle: " + angle);
  }

  @Test
  void everyRegionIsThereAndEveryTriangleHasOne() {
    int triangles = 0;
    for (Region region : Region.values()) {
      List<Integer> members = NORMAL.mesh().regions().getOrDefault(region.key(), List.of());
      assertTrue(!members.isEmpty(), region.key());
      triangles += members.size();
    }
    assertEquals(NORMAL.mesh().topology().triangleCount(), triangles);
  }

  @Test
  void theFissurePartsTheCaudaFromTheAntitragus() {
    Topology t = NORMAL.mesh().topology();
    for (int e = 0; e < t.edgeCount(); e++) {
      if (!t.isBoundary(e)) {
        Region a = NORMAL.region(t.leftTriangle(e));
        Region b = NORMAL.region(t.rightTriangle(e));
        assertTrue(!List.of(a, b).containsAll(List.of(Region.CAUDA_HELICIS, Region.ANTITRAGUS)));
      }
    }
  }

  @Test
  void normalsAreThoseOfTheSurfaceThroughTheVertices() {
    Auricle fine = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.REFERENCE);
    double[] own = fine.mesh().normals();
    double[] estimated =
        VertexNormals.estimate(fine.mesh().positions(), fine.mesh().topology(), Math.PI);
    double sum = 0;
    for (int v = 0; v < own.length; v += 3) {
      double cos = Vectors.dot(Vectors.at(own, v), Vectors.at(estimated, v));
      sum += Math.toDegrees(Math.acos(Math.min(1, cos)));
    }
    double mean = sum / fine.mesh().vertexCount();
    assertTrue(mean < 1, "mean angle, deg: " + mean);
  }

  @Test
  void theSameShapeGivesTheSameBits() {
    Auricle again = Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);
    assertTrue(java.util.Arrays.equals(NORMAL.mesh().positions(), again.mesh().positions()));
    assertTrue(java.util.Arrays.equals(NORMAL.mesh().normals(), again.mesh().normals()));
  }
}
