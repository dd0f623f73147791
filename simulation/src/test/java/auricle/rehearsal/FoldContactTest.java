package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.BadInputException;
import auricle.geometry.SimplexDistance;
import auricle.geometry.Vectors;
import auricle.mesh.ShellMesh;
import auricle.mesh.Topology;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No part of an ear passes through another, however much is asked of its threads. */
class FoldContactTest {
  /** Parts that are nearer than that at rest are neighbours along the sheet, mm. */
  private static final double NEIGHBOURS = 6;

  /**
   * Two thirds of the thickness of the thinnest sheet, mm; without contact, plan 21 ended with
   * cauda and bowl 0.02 mm apart, on their way through each other.
   */
  private static final double LEAST = 1;

  @ParameterizedTest
  @ValueSource(longs = {21, 28})
  void aClosedFoldKeepsItsFacesApart(long seed) throws BadInputException {
    RehearsalRun run = RandomCase.of(seed, RehearsalWatcher.SILENT);
    RehearsalResult result = run.run();
    result.steps().forEach(s -> assertTrue(s.outcome().converged(), s.label() + s.outcome()));
    double nearest = nearest(run.body().auricle().mesh(), run.body().unknowns());
    assertTrue(nearest > LEAST, "nearest faces " + nearest);
  }

  private static double nearest(ShellMesh mesh, double[] u) {
    double[] rest = mesh.unknowns();
    double nearest = Double.POSITIVE_INFINITY;
    for (int v = 0; v < mesh.vertexCount(); v++) {
      for (int t = 0; t < mesh.topology().triangleCount(); t++) {
        if (near(u, v, mesh.topology().vertex(t, 0))
            && distance(mesh.topology(), v, t, rest) > NEIGHBOURS) {
          nearest = Math.min(nearest, distance(mesh.topology(), v, t, u));
        }
      }
    }
    return nearest;
  }

  /** Whether it is worth while to look: triangles are smaller than that. */
  private static boolean near(double[] u, int vertex, int corner) {
    double[] apart = Vectors.subtract(Vectors.at(u, 3 * vertex), Vectors.at(u, 3 * corner));
    return Vectors.norm(apart) < NEIGHBOURS;
  }

  private static double distance(Topology topology, int vertex, int t, double[] u) {
    return new SimplexDistance(
            Vectors.at(u, 3 * vertex),
            Vectors.at(u, 3 * topology.vertex(t, 0)),
            Vectors.at(u, 3 * topology.vertex(t, 1)),
            Vectors.at(u, 3 * topology.vertex(t, 2)))
        .distance();
  }
}
