package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Auricle;
import auricle.anatomy.Level;
import auricle.anatomy.MeshLevel;
import auricle.anatomy.ShapeParameters;
import auricle.assessment.Caution;
import auricle.assessment.CautionKind;
import auricle.mesh.Directors;
import auricle.mesh.Topology;
import auricle.testing.Check;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An ear that is folded more sharply than its mesh can follow comes with a caution. */
class FoldCautionTest {
  private static final Auricle AURICLE =
      Auricle.of(ShapeParameters.normalAdult(), MeshLevel.PLANNING);

  /** The ear at rest, one vertex's normal turned away from its neighbour's by an angle. */
  private static DeformedEar turned(int vertex, int neighbour, double turn_deg) {
    int n = AURICLE.mesh().vertexCount();
    double[] u = AURICLE.mesh().unknowns();
    Directors directors = AURICLE.mesh().directors();
    float[] points = new float[3 * n];
    float[] normals = new float[3 * n];
    double[] d = new double[3];
    for (int v = 0; v < n; v++) {
      directors.value(v, u, d, 0);
      for (int a = 0; a < 3; a++) {
        points[3 * v + a] = (float) u[3 * v + a];
        normals[3 * v + a] = (float) d[a];
      }
    }
    if (turn_deg > 0) {
      turn(normals, 3 * vertex, 3 * neighbour, Math.toRadians(turn_deg));
    }
    Topology topology = AURICLE.mesh().topology();
    return new DeformedEar(
        points,
        normals,
        new float[n],
        topology.triangles(),
        new float[DeformedEar.Field.values().length][n],
        Map.of());
  }

  /** Makes the normal at v that at w turned by an angle, in the plane of the two. */
  private static void turn(float[] normals, int v, int w, double angle) {
    double along = 0;
    for (int a = 0; a < 3; a++) {
      along += normals[v + a] * normals[w + a];
    }
    double across = Math.sqrt(1 - along * along);
    for (int a = 0; a < 3; a++) {
      double side = (normals[v + a] - along * normals[w + a]) / across;
      normals[v + a] = (float) (Math.cos(angle) * normals[w + a] + Math.sin(angle) * side);
    }
  }

  @Test
  void anEarAtRestComesWithout() {
    assertEquals(Optional.empty(), FoldCaution.of(turned(0, 1, 0), AURICLE));
  }

  @Test
  void theSharpestFoldIsToldWithItsPlaceAndTheLimit() {
    Topology topology = AURICLE.mesh().topology();
    int triangle = topology.triangleCount() / 2;
    DeformedEar ear = turned(topology.vertex(triangle, 0), topology.vertex(triangle, 1), 150);
    Caution caution = FoldCaution.of(ear, AURICLE).orElseThrow();
    assertEquals(CautionKind.FOLDED_BEYOND_MESH, caution.kind());
    assertTrue(caution.measured() >= 149.9, "turned by 150 deg, found " + caution.measured());
    Check.within(1e-9, caution.limit().value(), 70, "limits.csv, turn_along_an_edge");
    Level third = Extreme.third(AURICLE.chart().heightPercent(triangle));
    assertEquals(third.key(), caution.where());
    assertTrue(caution.words().contains(third.key() + " third"), caution.words());
  }
}
