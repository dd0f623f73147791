package auricle.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.MeshLevel;
import auricle.measurement.Figure;
import auricle.rehearsal.Extremes;
import auricle.rehearsal.Rehearsal;
import auricle.rehearsal.RehearsalResult;
import auricle.rehearsal.RehearsalSettings;
import auricle.rehearsal.RehearsalWatcher;
import auricle.rehearsal.StepResult;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * After every step of a plan, figures in mm change by under 0.3 mm and angles by under 2 deg from
 * the planning to the fine mesh; greatest strain and stress by a share that is our own convention.
 */
@Tag("slow")
class FinerMeshTest {
  private static final double DISTANCE = 0.3;
  private static final double ANGLE = 2;
  private static final double SHARE = 0.1;

  /** Here the greatest strain is that about a bite, for which the planning mesh is too coarse. */
  private static final String AT_A_BITE = "concha_mastoid_alone";

  @ParameterizedTest
  @ValueSource(
      strings = {"open_fold", "lobule_unmasked", "concha_mastoid_alone", "deep_bowl", "rim_wedge"})
  void everyStepDoesTheSameOnAFinerMesh(String scenario) throws Exception {
    RehearsalResult planning = run(scenario, MeshLevel.PLANNING);
    RehearsalResult fine = run(scenario, MeshLevel.FINE);
    Map<String, Double> off = new TreeMap<>();
    for (int i = 0; i < planning.steps().size(); i++) {
      StepResult step = planning.steps().get(i);
      if (!scenario.equals(AT_A_BITE)) {
        compare(step, fine.steps().get(i), off);
      }
      for (Figure figure : Figure.values()) {
        double change = figure.of(fine.steps().get(i).measures()) - figure.of(step.measures());
        if (Math.abs(change) > (figure.unit().equals("deg") ? ANGLE : DISTANCE)) {
          off.put(step.label() + ": " + figure.key(), change);
        }
      }
    }
    assertEquals(Map.of(), off);
  }

  private static void compare(StepResult planning, StepResult fine, Map<String, Double> off) {
    Extremes coarse = planning.extremes();
    double strain = fine.extremes().strain().value() / coarse.strain().value();
    double stress = fine.extremes().stress_mpa().value() / coarse.stress_mpa().value();
    if (Math.abs(strain - 1) > SHARE || Math.abs(stress - 1) > SHARE) {
      off.put(planning.label() + ": greatest strain by " + strain + ", stress by", stress);
    }
  }

  private static RehearsalResult run(String scenario, MeshLevel mesh) throws Exception {
    ScenarioEar ear =
        ScenarioReader.shipped()
            .read(
                ShippedScenariosTest.files().stream()
                    .filter(path -> path.endsWith(scenario + ".yaml"))
                    .findFirst()
                    .orElseThrow())
            .scenario()
            .ears()
            .get(0);
    RehearsalSettings settings = RehearsalSettings.tied().withMesh(mesh);
    RehearsalResult result = Rehearsal.run(ear.ear(), settings, RehearsalWatcher.SILENT);
    assertTrue(result.converged(), scenario);
    return result;
  }
}
