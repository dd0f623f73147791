package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import auricle.anatomy.MeshLevel;
import auricle.measurement.Figure;
import auricle.measurement.Measures;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Figures in mm change by under 0.3 mm and angles by under 2 deg from planning to fine mesh when a
 * strip has been taken from the bowl. After fold sutures some change more: see THEORY.md.
 */
@Tag("slow")
class FinerMeshTest {
  private static final double DISTANCE = 0.3;
  private static final double ANGLE = 2;

  @Test
  void aStripFromTheBowlDoesTheSameOnAFinerMesh() throws Exception {
    Path file =
        ShippedScenariosTest.files().stream()
            .filter(path -> path.endsWith("deep_bowl.yaml"))
            .findFirst()
            .orElseThrow();
    ScenarioEar ear = ScenarioReader.shipped().read(file).scenario().ears().get(0);
    Measures planning = after(ear, MeshLevel.PLANNING);
    Measures fine = after(ear, MeshLevel.FINE);
    Map<Figure, Double> off = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      double change = Math.abs(figure.of(fine) - figure.of(planning));
      if (change > (figure.unit().equals("deg") ? ANGLE : DISTANCE)) {
        off.put(figure, change);
      }
    }
    assertEquals(Map.of(), off);
  }

  private static Measures after(ScenarioEar ear, MeshLevel mesh) throws Exception {
    RehearsalSettings settings = RehearsalSettings.tied().withMesh(mesh);
    RehearsalResult result = Rehearsal.run(ear.ear(), settings, RehearsalWatcher.SILENT);
    return result.after().measures();
  }
}
