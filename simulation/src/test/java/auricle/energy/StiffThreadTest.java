package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.geometry.Vectors;
import auricle.mesh.Topology;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A loop through four bites on elastically bedded vertices, solved by Newton with shift and
 * halving.
 */
class StiffThreadTest {
  private static final int N = 4;
  private final Topology mesh = Shapes.grid(N, N);
  private final int size = 3 * mesh.vertexCount();
  private final double[] rest = Arrays.copyOf(Shapes.shaken(Shapes.flat(N, N), 0.1, 1), size);

  private ElasticAttachment bed() {
    double[] areas = new double[mesh.vertexCount()];
    Arrays.fill(areas, 1);
    int[] all = IntStream.range(0, mesh.vertexCount()).toArray();
    return ElasticAttachment.isotropic("bed", all, areas, rest, 1);
  }

  private ElasticThread loop(double axialStiffness) {
    return new ElasticThread(
        "loop",
        List.of(
            new SurfacePoint(mesh, 1, 0.2, 0.3, -0.5),
            new SurfacePoint(mesh, 6, 0.6, 0.1, -0.5),
            new SurfacePoint(mesh, 30, 0.3, 0.2, -0.5),
            new SurfacePoint(mesh, 25, 0.3, 0.3, -0.5)),
        true,
        axialStiffness);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 300, 3e4})
  void newtonTightensTheLoopHoweverStiffTheThread(double axialStiffness) {
    ElasticThread thread = loop(axialStiffness);
    double length = thread.length(rest);
    thread.tighten(length, 0.8 * length);
    double[] u = rest.clone();
    int iterations = 0;
    for (int step = 1; step <= 4; step++) {
      thread.setLoadFactor(step / 4.0);
      iterations += SmallNewton.solve(u, 1e-9, bed(), thread);
    }
    assertTrue(iterations < 80, axialStiffness + " N: " + iterations + " iterations");
    double stretched = thread.length(u) - 0.8 * length;
    assertEquals(axialStiffness / (0.8 * length) * stretched, thread.tension(u), 1e-9);
  }

  @Test
  void loopTiedAtATensionEndsWhereItsOwnLengthWouldHaveTakenIt() {
    ElasticThread pulled = loop(300);
    pulled.pull(0.8);
    double[] u = rest.clone();
    assertTrue(SmallNewton.solve(u, 1e-9, bed(), pulled) < 20);
    assertEquals(0.8, pulled.tension(u));
    pulled.knot(u);
    assertTrue(SmallNewton.solve(u, 1e-9, bed(), pulled) <= 1, "knotting does not move anything");
    ElasticThread tied = loop(300);
    ThreadLaw.Elastic law = (ThreadLaw.Elastic) pulled.law();
    tied.tieToLength(law.restLength_mm());
    double[] v = rest.clone();
    assertTrue(SmallNewton.solve(v, 1e-9, bed(), tied) < 40);
    for (int i = 0; i < size; i += 3) {
      assertEquals(0, Vectors.norm(Vectors.subtract(Vectors.at(u, i), Vectors.at(v, i))), 1e-8);
    }
  }
}
