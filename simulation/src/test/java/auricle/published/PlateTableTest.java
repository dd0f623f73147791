package auricle.published;

import auricle.analysis.Analysis;
import auricle.analysis.AnalysisResult;
import auricle.analysis.AnalysisWatcher;
import auricle.analysis.Model;
import auricle.diagnostics.BadInputException;
import auricle.modelfile.ModelFolder;
import auricle.modelfile.ModelReader;
import auricle.modelfile.ModelSchema;
import auricle.testing.Check;
import auricle.verification.ReferenceTable;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rectangular plates of every side ratio in the table: deflections under uniform and central load,
 * moments at the centre and at the middles of clamped sides. A quarter of a plate whose short side,
 * along x, is a = 10 mm, with D = 0.001 N·mm; small cells at the held sides.
 */
@Tag("slow")
class PlateTableTest {
  private static final ModelReader READER = new ModelReader(ModelSchema.load());
  private static final String FILE = "plates_rectangular_nu0.3_computed.csv";
  private static final ReferenceTable TABLE = ReferenceTable.read(FILE);
  private static final double TOLERANCE = 0.01;

  /** Uniform load: q a⁴/D and q a² in mm and N. */
  private static final double UNIFORM_DEFLECTION = 1e5;

  private static final double UNIFORM_MOMENT = 1;

  /** Central force: P a²/D in mm. */
  private static final double POINT_DEFLECTION = 100;

  private static final String UNIFORM =
      "surface_force: {where: {everything: true}, force_n_per_mm2: [0, 0, -0.01]}";
  private static final String POINT = "point_force: {where: end_high, each_n: [0, 0, -2.5e-4]}";
  private static final String HELD =
      "fix: {where: {any_of: [start, side_low]}, directions: [x, y, z]}";
  private static final String CLAMPED = "clamp: {where: {any_of: [start, side_low]}}";

  static IntStream rows() {
    return IntStream.range(0, TABLE.rows());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void simplySupportedUnderUniformLoad(int row) throws BadInputException {
    List<Double> found = solve(row, HELD, UNIFORM, 1);
    check(row, "ss_w_uniform", found.get(0) / UNIFORM_DEFLECTION);
    check(row, "ss_Mshort_centre", -found.get(1) / UNIFORM_MOMENT);
    check(row, "ss_Mlong_centre", -found.get(2) / UNIFORM_MOMENT);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void clampedUnderUniformLoad(int row) throws BadInputException {
    List<Double> found = solve(row, CLAMPED, UNIFORM, 25);
    check(row, "cl_w_uniform", found.get(0) / UNIFORM_DEFLECTION);
    check(row, "cl_Mshort_centre", -found.get(1) / UNIFORM_MOMENT);
    check(row, "cl_Mlong_centre", -found.get(2) / UNIFORM_MOMENT);
    check(row, "cl_M_mid_long_edge", -found.get(3) / UNIFORM_MOMENT);
    check(row, "cl_M_mid_short_edge", -found.get(4) / UNIFORM_MOMENT);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void underACentralForce(int row) throws BadInputException {
    check(row, "ss_w_point", solve(row, HELD, POINT, 1).get(0) / POINT_DEFLECTION);
    check(row, "cl_w_point", solve(row, CLAMPED, POINT, 1).get(0) / POINT_DEFLECTION);
  }

  private static void check(int row, String column, double found) {
    String source = FILE + ", " + column + ", b/a = " + TABLE.text(row, "b_over_a");
    Check.within(TOLERANCE, found, TABLE.column(column)[row], source + " (computed)");
  }

  /** Deflection at the centre; moments there, along x and y; at the middles of the sides. */
  private static List<Double> solve(int row, String support, String load, double grading)
      throws BadInputException {
    double ratio = TABLE.column("b_over_a")[row];
    int across = grading > 1 ? 44 : 24; // moments at a held side need small cells there
    int along = (int) Math.min(2 * across, Math.round(across * ratio));
    String text =
        """
        format: auricle-model/1
        mesh:
          plate: {length_mm: 5, width_mm: %s, divisions: [%d, %d], pattern: crossed, grading: [%s, %s]}
        section: {thickness_mm: 0.1, young_mpa: 10.92, poisson: 0.3}
        supports:
          - symmetry: {where: end, normal: x}
          - symmetry: {where: side_high, normal: y}
          - %s
        loads:
          - %s
        solve:
          linear: {}
        probes:
          w: {displacement: {where: end_high, direction: -z}}
          m_short: {section_moment: {where: end_high, component: along, axis: {along: x}}}
          m_long: {section_moment: {where: end_high, component: across, axis: {along: x}}}
          m_long_edge: {section_moment: {where: start_high, component: along, axis: {along: x}}}
          m_short_edge: {section_moment: {where: end_low, component: across, axis: {along: x}}}
        """
            .formatted(
                5 * ratio,
                across,
                along,
                grading,
                Math.pow(grading, Math.min(1.5, ratio)),
                support,
                load);
    return values(READER.read("plate", text, ModelFolder.of(Path.of("."))).model());
  }

  private static List<Double> values(Model model) throws BadInputException {
    AnalysisResult result = Analysis.run(model, AnalysisWatcher.NONE);
    return result.steps().get(result.steps().size() - 1).probes();
  }
}
