package auricle.energy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Analytic: a tendon across a torsion hinge between two rigid links, p = q = 10, k = 50, flat at
 * rest. Closed forms and their tables: hinge_tendon_inextensible.csv and hinge_tendon_elastic.csv,
 * headers.
 */
class HingeTendonTest {
  private static final double LINK = 10;
  private static final double HINGE = 50;
  private static final double SPRING = 20;

  /** Tables print eight digits. */
  private static final double PRINTED = 2e-7;

  static Stream<double[]> inextensible() throws IOException {
    return rows("hinge_tendon_inextensible.csv");
  }

  static Stream<double[]> elastic() throws IOException {
    return rows("hinge_tendon_elastic.csv");
  }

  private static Stream<double[]> rows(String table) throws IOException {
    String path = "/auricle/verification/tables/" + table;
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(HingeTendonTest.class.getResourceAsStream(path)),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#") && Character.isDigit(line.charAt(0)))
          .skip(1) // the flat state, where the tendon carries nothing or any load up to 2 k/p
          .map(line -> Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray())
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("inextensible")
  void nearlyInextensibleTendonMeetsTheTable(double[] row) {
    ElasticThread tendon = tendon(1e9);
    tendon.tieToLength(row[0]);
    double dihedral = equilibrium(tendon, Math.toRadians(row[1] - 5), Math.toRadians(row[1] + 5));
    assertEquals(row[1], Math.toDegrees(dihedral), PRINTED * 180);
    assertEquals(row[3], tendon.tension(ends(dihedral)), PRINTED * 12);
  }

  @ParameterizedTest
  @MethodSource("inextensible")
  void tendonPulledAtTheTabulatedTensionFoldsAsTabulated(double[] row) {
    ElasticThread tendon = tendon(1000);
    tendon.pull(row[3]);
    double dihedral = equilibrium(tendon, Math.toRadians(row[1] - 5), Math.toRadians(row[1] + 5));
    assertEquals(row[1], Math.toDegrees(dihedral), 1e-4);
    tendon.knot(ends(dihedral));
    assertEquals(0, moment(tendon, dihedral), 1e-9, "knotting keeps the equilibrium");
  }

  @ParameterizedTest
  @MethodSource("elastic")
  void elasticTendonMeetsTheTable(double[] row) {
    ElasticThread tendon = tendon(SPRING * row[0]);
    tendon.tieToLength(row[0]);
    double dihedral = equilibrium(tendon, Math.toRadians(row[1] - 5), Math.toRadians(row[1] + 5));
    assertEquals(row[1], Math.toDegrees(dihedral), PRINTED * 180);
    assertEquals(row[3], tendon.length(ends(dihedral)), PRINTED * 20);
    assertEquals(row[4], tendon.tension(ends(dihedral)), PRINTED * 12);
  }

  private static ElasticThread tendon(double axialStiffness) {
    return new ElasticThread(
        "tendon", List.of(new VertexPoint(0), new VertexPoint(1)), false, axialStiffness);
  }

  private static double[] ends(double dihedral) {
    return new double[] {LINK, 0, 0, LINK * Math.cos(dihedral), LINK * Math.sin(dihedral), 0};
  }

  /** Total moment on the moving link in the direction that opens the hinge. */
  private static double moment(ElasticThread tendon, double dihedral) {
    double[] gradient = new double[6];
    tendon.derivatives(0, ends(dihedral), gradient, new double[36]);
    double pull =
        gradient[3] * -LINK * Math.sin(dihedral) + gradient[4] * LINK * Math.cos(dihedral);
    return HINGE * (Math.PI - dihedral) - pull;
  }

  private static double equilibrium(ElasticThread tendon, double low, double high) {
    double below = low;
    double above = high;
    for (int i = 0; i < 100; i++) {
      double middle = (below + above) / 2;
      if (moment(tendon, middle) > 0) {
        below = middle;
      } else {
        above = middle;
      }
    }
    return (below + above) / 2;
  }
}
