package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.material.Section;
import auricle.material.SectionField;
import auricle.mesh.Directors;
import auricle.mesh.RestShape;
import auricle.mesh.Topology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Analytic: a flat strip bent to a bow by a string between its ends is the elastica of a pinned
 * column. With modulus k, chord/L = 2 E(k)/K(k) − 1 and string tension T = 4 K(k)² EI/L² (Love
 * 1927, A Treatise on the Mathematical Theory of Elasticity, art. 263; from memory).
 */
class BowStringTest {
  private static final int CELLS = 40;
  private static final double LENGTH = 20;
  private static final double THICKNESS = 0.05;
  private static final double MODULUS = 1e4;
  private static final double STIFFNESS = MODULUS * Math.pow(THICKNESS, 3) / 12;

  private final Topology mesh = Shapes.grid(CELLS, 1);
  private final Directors directors = new Directors(mesh.unknowns(), upright());

  private double[] upright() {
    double[] normals = new double[3 * mesh.vertexCount()];
    for (int v = 0; v < mesh.vertexCount(); v++) {
      normals[3 * v + 2] = 1;
    }
    return normals;
  }

  private double[] flat() {
    double[] u = Shapes.flat(CELLS, 1);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      u[3 * v] *= LENGTH / CELLS;
    }
    return u;
  }

  /** A circular arc with the strip's length, convex upwards. */
  private double[] arc(double halfAngle) {
    double[] u = flat();
    double radius = LENGTH / (2 * halfAngle);
    for (int v = 0; v < mesh.vertexCount(); v++) {
      double angle = halfAngle * (2 * u[3 * v] / LENGTH - 1);
      u[3 * v] = LENGTH / 2 + radius * Math.sin(angle);
      u[3 * v + 2] = radius * (Math.cos(angle) - Math.cos(halfAngle));
      int w = mesh.unknowns().director(v);
      for (int k = 0; k < 2; k++) {
        u[w + k] = Math.tan(angle) * directors.frame(v, 1 + k, 0);
      }
    }
    return u;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.95, 0.9, 0.8})
  void stringOfABowCarriesTheTensionOfTheElastica(double chord) {
    List<EnergyTerm> terms = new ArrayList<>();
    RestShape rest = RestShape.of(mesh, flat(), directors);
    SectionField section = SectionField.uniform(Section.isotropic(MODULUS, 0, THICKNESS));
    terms.addAll(ShellTerms.of(rest, directors, section));
    ElasticThread string = new ElasticThread("string", List.of(end(0), end(LENGTH)), false, 1e3);
    string.tieToLength(chord * LENGTH);
    terms.add(string);
    terms.add(ElasticAttachment.isotropic("no drift", drift(), ones(4), flat(), 0.1));
    double[] u = arc(Math.sqrt(6 * (1 - chord)));
    int iterations = SmallNewton.solve(u, 1e-8, terms.toArray(EnergyTerm[]::new));
    assertTrue(iterations < 60, iterations + " iterations");
    double modulus = modulus(string.length(u) / LENGTH);
    double expected = Math.pow(2 * integrals(modulus)[0] / LENGTH, 2) * STIFFNESS;
    assertEquals(expected, string.tension(u), 2e-3 * expected);
  }

  /** Middle of the end edge at x. */
  private MaterialPoint end(double x) {
    double[] u = flat();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double[] weight = new double[3];
      int there = 0;
      for (int i = 0; i < 3; i++) {
        weight[i] = u[3 * mesh.vertex(t, i)] == x ? 0.5 : 0;
        there += weight[i] > 0 ? 1 : 0;
      }
      if (there == 2) {
        return new SurfacePoint(mesh, t, weight[1], weight[2], 0);
      }
    }
    throw new IllegalArgumentException("no edge at " + x);
  }

  /**
   * The four corners of the middle cell: what is tied to nothing else must be kept from floating.
   */
  private static int[] drift() {
    int m = CELLS / 2;
    return new int[] {m, m + 1, m + CELLS + 1, m + CELLS + 2};
  }

  private static double[] ones(int n) {
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static double modulus(double chord) {
    double low = 0;
    double high = 0.99;
    for (int i = 0; i < 80; i++) {
      double k = (low + high) / 2;
      double[] both = integrals(k);
      if (2 * both[1] / both[0] - 1 > chord) {
        low = k;
      } else {
        high = k;
      }
    }
    return low;
  }

  /** K(k) and E(k) by the arithmetic-geometric mean. */
  private static double[] integrals(double k) {
    double a = 1;
    double g = Math.sqrt(1 - k * k);
    double sum = k * k / 2;
    double weight = 1;
    for (int i = 0; i < 8; i++) {
      double c = (a - g) / 2;
      double mean = (a + g) / 2;
      g = Math.sqrt(a * g);
      a = mean;
      sum += weight * c * c;
      weight *= 2;
    }
    double first = Math.PI / (2 * a);
    return new double[] {first, first * (1 - sum)};
  }
}
