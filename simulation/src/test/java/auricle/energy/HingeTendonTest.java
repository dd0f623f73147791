package auricle.energy;

import auricle.testing.Check;
import auricle.verification.ReferenceTable;
import java.util.List;
import java.util.stream.IntStream;
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

  private static final String SOURCE = "closed form in the head of the table (computed)";

  /** A row: length of tendon at rest, and what the table gives for it. */
  private record Row(double rest, double dihedral_deg, double length, double tension) {}

  static Stream<Row> inextensible() {
    ReferenceTable table = ReferenceTable.read("hinge_tendon_inextensible.csv");
    double[] length = table.column("tendon_length");
    return rows(length, table.column("dihedral_deg"), length, table.column("tension"));
  }

  static Stream<Row> elastic() {
    ReferenceTable table = ReferenceTable.read("hinge_tendon_elastic.csv");
    return rows(
        table.column("tendon_rest_length"),
        table.column("dihedral_deg"),
        table.column("tendon_length"),
        table.column("tension"));
  }

  /** All rows but the flat state, where the tendon carries nothing or any load up to 2 k/p. */
  private static Stream<Row> rows(
      double[] rest, double[] dihedral_deg, double[] length, double[] tension) {
    return IntStream.range(1, rest.length)
        .mapToObj(i -> new Row(rest[i], dihedral_deg[i], length[i], tension[i]));
  }

  @ParameterizedTest
  @MethodSource("inextensible")
  void nearlyInextensibleTendonMeetsTheTable(Row row) {
    ElasticThread tendon = tendon(1e9);
    tendon.tieToLength(row.rest());
    double dihedral = equilibrium(tendon, row);
    Check.close(Math.toDegrees(dihedral), row.dihedral_deg(), PRINTED * 180, SOURCE);
    Check.close(tendon.tension(ends(dihedral)), row.tension(), PRINTED * 12, SOURCE);
  }

  @ParameterizedTest
  @MethodSource("inextensible")
  void tendonPulledAtTheTabulatedTensionFoldsAsTabulated(Row row) {
    ElasticThread tendon = tendon(1000);
    tendon.pull(row.tension());
    double dihedral = equilibrium(tendon, row);
    Check.close(Math.toDegrees(dihedral), row.dihedral_deg(), 1e-4, SOURCE);
    tendon.knot(ends(dihedral));
    Check.close(moment(tendon, dihedral), 0, 1e-9, HINGE, "knotting keeps the equilibrium");
  }

  @ParameterizedTest
  @MethodSource("elastic")
  void elasticTendonMeetsTheTable(Row row) {
    ElasticThread tendon = tendon(SPRING * row.rest());
    tendon.tieToLength(row.rest());
    double dihedral = equilibrium(tendon, row);
    Check.close(Math.toDegrees(dihedral), row.dihedral_deg(), PRINTED * 180, SOURCE);
    Check.close(tendon.length(ends(dihedral)), row.length(), PRINTED * 20, SOURCE);
    Check.close(tendon.tension(ends(dihedral)), row.tension(), PRINTED * 12, SOURCE);
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

  /** Dihedral angle at rest, sought within 5 to 6 degrees about that of the table. */
  private static double equilibrium(ElasticThread tendon, Row row) {
    double below = Math.toRadians(row.dihedral_deg() - 5);
    double above = Math.toRadians(row.dihedral_deg() + 6);
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
