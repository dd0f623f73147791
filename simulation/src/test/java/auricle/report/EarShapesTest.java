package auricle.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.diagnostics.Findings;
import auricle.mesh.ShellMesh;
import auricle.meshfile.MeshFiles;
import auricle.rehearsal.DeformedEar;
import auricle.report.picture.PaperEar;
import auricle.testing.Check;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes of an ear, written and read again. */
class EarShapesTest {
  private static final DeformedEar EAR = PaperEar.moment(120).shape();

  @TempDir Path folder;

  private static double[][] numbers(boolean left, String kind) {
    return new EarShapes(EAR, left)
        .obj("a note")
        .lines()
        .filter(l -> l.startsWith(kind + " "))
        .map(l -> Arrays.stream(l.substring(2).split(" ")).mapToDouble(Double::parseDouble))
        .map(s -> s.toArray())
        .toArray(double[][]::new);
  }

  @Test
  void theWallHasTwoFacesAThicknessApart() {
    double[][] v = numbers(false, "v");
    int n = EAR.vertexCount();
    for (int i = 0; i < n; i += 97) {
      double x = v[i][0] - v[i + n][0];
      double y = v[i][1] - v[i + n][1];
      double z = v[i][2] - v[i + n][2];
      double apart = Math.sqrt(x * x + y * y + z * z);
      Check.close(apart, EAR.thickness()[i], 1e-4, "the thickness of the ear there");
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theWallIsClosedAndTurnsOutwards(boolean left) {
    double[][] v = numbers(left, "v");
    double volume = 0;
    Map<List<Integer>, Integer> sides = new HashMap<>();
    for (double[] face : numbers(left, "f")) {
      int[] c = {(int) face[0] - 1, (int) face[1] - 1, (int) face[2] - 1};
      volume += triple(v[c[0]], v[c[1]], v[c[2]]) / 6;
      for (int i = 0; i < 3; i++) {
        sides.merge(List.of(c[i], c[(i + 1) % 3]), 1, Integer::sum);
      }
    }
    sides.forEach(
        (side, count) -> {
          assertEquals(1, count);
          assertEquals(1, sides.get(List.of(side.get(1), side.get(0))));
        });
    assertTrue(volume > 0, "volume " + volume);
  }

  private static double triple(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        + a[1] * (b[2] * c[0] - b[0] * c[2])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }

  @Test
  void theMidSurfaceIsReadBackAsItWas() throws Exception {
    Path file = folder.resolve("ear.vtu");
    Files.writeString(file, new EarShapes(EAR, false).vtu("a note"));
    ShellMesh mesh = MeshFiles.read(file, new Findings()).orElseThrow();
    assertEquals(EAR.vertexCount(), mesh.vertexCount());
    assertEquals(EAR.point(500).lateral_mm(), mesh.position(500, 0));
    assertEquals(EAR.triangleCount(), mesh.topology().triangleCount());
  }

  @Test
  void aLeftEarIsMirrored() {
    double right = numbers(false, "v")[500][0];
    assertEquals(-right, numbers(true, "v")[500][0]);
  }

  @Test
  void fieldsAreNamedWithTheirUnits() {
    String vtu = new EarShapes(EAR, false).vtu("a note");
    for (String name :
        List.of("strain", "stress_mpa", "displacement_mm", "change_in_step_mm", "thickness_mm")) {
      assertTrue(vtu.contains("Name=\"" + name + "\""), name);
    }
  }
}
