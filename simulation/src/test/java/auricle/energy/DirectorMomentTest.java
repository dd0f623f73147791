package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import auricle.geometry.Vectors;
import auricle.mesh.Directors;
import auricle.mesh.Topology;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DirectorMomentTest {
  private static final double[] Y = {0, 1, 0};
  private final Topology mesh = Shapes.grid(2, 1);
  private final double[] normals = {0, 0, 1, 0, 0, 1, 0, 0.3, 1, 0.2, 0, 1, 0, 0, 1, 1, 1, 2};
  private final Directors directors = new Directors(mesh.unknowns(), normals);
  private final double[] flat = Shapes.flat(2, 1);

  private DirectorMoment moment() {
    return new DirectorMoment("m", directors, Y, Map.of(0, 2.0, 2, 2.0, 3, -1.0, 5, 0.5));
  }

  @Test
  void derivativesAreExact() {
    double[] u = Shapes.shaken(flat, 0.3, 5);
    EnergyTermContract.assertExact(moment(), u);
    DirectorMoment half = moment();
    half.setLoadFactor(0.5);
    assertEquals(Shapes.energy(moment(), u) / 2, Shapes.energy(half, u), 1e-15);
  }

  @Test
  void momentIsThatAboutItsAxisHoweverTheDirectorLeans() {
    double[] u = Shapes.shaken(flat, 0.3, 6);
    double[] gradient = Shapes.gradient(moment(), u);
    double[] block = new double[Directors.BLOCK];
    directors.derivatives(5, u, block, 0);
    double[] d = Vectors.at(block, 0);
    // tilts that turn the director about the axis at unit rate: d,1 s + d,2 t = a × d
    double[] turn = Vectors.cross(Y, d);
    double[] d1 = Vectors.at(block, 3);
    double[] d2 = Vectors.at(block, 6);
    double[] normal = Vectors.cross(d1, d2);
    double square = Vectors.dot(normal, normal);
    double s = Vectors.dot(Vectors.cross(turn, d2), normal) / square;
    double t = Vectors.dot(Vectors.cross(d1, turn), normal) / square;
    int w = mesh.unknowns().director(5);
    assertEquals(-0.5, gradient[w] * s + gradient[w + 1] * t, 1e-14);
  }

  @Test
  void momentStaysTheSameThroughManyTurns() {
    double[] u = flat.clone();
    int w = mesh.unknowns().director(0);
    DirectorMoment moment = moment();
    for (int k = 0; k < 60; k++) {
      double[] gradient = Shapes.gradient(moment, u);
      assertEquals(2, Math.hypot(gradient[w], gradient[w + 1]), 1e-12);
      u[w] = -0.2 * gradient[w];
      u[w + 1] = -0.2 * gradient[w + 1];
      directors.rebase(u);
    }
  }

  @Test
  void lineMomentGoesToTheEndsOfItsEdges() {
    int[] left =
        IntStream.range(0, mesh.edgeCount())
            .filter(e -> flat[3 * mesh.edgeStart(e)] == 0 && flat[3 * mesh.edgeEnd(e)] == 0)
            .toArray();
    Map<Integer, Double> moments = DirectorMoment.onEdges(mesh, flat, left, 3);
    assertEquals(Map.of(0, 1.5, 3, 1.5), moments);
  }

  @Test
  void momentAboutADirectorIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new DirectorMoment("m", directors, new double[] {0, 0, 1}, Map.of(0, 1.0)));
  }
}
