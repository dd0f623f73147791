package auricle.anatomy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.mesh.Topology;
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
  void everyRegionIsThere() {
    for (Region region : Region.values()) {
      assertTrue(NORMAL.mesh().regions().containsKey(region.key()), region.key());
    }
  }

  @Test
  void theEarStandsClearOfTheHead() {
    for (int v = 0; v < NORMAL.mesh().vertexCount(); v++) {
      assertTrue(NORMAL.mesh().position(v, 0) >= 1.5, "vertex " + v);
    }
  }
}
