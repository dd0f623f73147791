package auricle.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.modelfile.SmallModels;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A clamped disc under even load on every kind of mesh, against Kirchhoff's q a⁴ / (64 D). */
class DiscMeshesTest {
  private static final String DISC =
      """
      format: auricle-model/1
      title: clamped disc
      mesh:
        disc: {radius_mm: 10, to_deg: ANGLE, MESH}
      section: {thickness_mm: 0.1, young_mpa: 10.92, poisson: 0.3}
      supports:
        - clamp: {where: side_high}
      loads:
        - surface_force: {where: {everything: true}, force_n_per_mm2: [0, 0, -1.0e-6]}
      solve: {linear: {}}
      probes:
        sag: {displacement: {where: side_low, direction: -z}}
      """;

  private static final String SYMMETRY =
      """
        - symmetry: {where: start, normal: y}
        - symmetry: {where: end, normal: x}
      loads:
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "360 | divisions: [72, 12], pattern: even_rows",
        "360 | divisions: [72, 12], pattern: even_rows, jitter: 0.3",
        "360 | divisions: [72, 12], pattern: unaligned, jitter: 0.3",
        "360 | divisions: [60, 12], pattern: even_rows, grading: [1, 0.5]",
        "90 | divisions: [18, 12], pattern: even_rows",
        "90 | divisions: [18, 12], pattern: unaligned, jitter: 0.3, seed: 4",
        "90 | divisions: [18, 12]",
      })
  void theMiddleSagsByTheExactValue(String angle, String mesh) throws Exception {
    String text = DISC.replace("ANGLE", angle).replace("MESH", mesh);
    if (angle.equals("90")) {
      text = text.replace("loads:\n", SYMMETRY);
    }
    assertEquals(0.15625, SmallModels.last(text, "sag"), 0.01 * 0.15625, mesh);
  }
}
