package auricle.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.MeshLevel;
import auricle.assessment.CautionKind;
import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.scenario.LoadedScenario;
import auricle.scenario.ScenarioReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A tie at more than the thread or its bite bears: said before, and what happens is said after. */
class OverTightTieTest {
  private static LoadedScenario tied(String thread, double tension_n) throws BadInputException {
    String text =
        """
        format: auricle-scenario/1
        title: Over-tight, invented
        ear: {side: right, age_years: 24, fold_angle_upper_deg: 132, helix_mastoid_upper_mm: 19}
        plan:
          - fold_suture: {name: tight, level_percent: 80, thread: %s, tie: {tension_n: %s}}
        """
            .formatted(thread, tension_n);
    return ScenarioReader.shipped().read("over_tight.yaml", text);
  }

  private static RehearsalResult day(LoadedScenario scenario) throws BadInputException {
    RehearsalSettings settings =
        new RehearsalSettings(MeshLevel.PLANNING, true, List.of(0.0, 1.0), 0, 1);
    return Rehearsal.run(
        scenario.scenario().ears().get(0).ear(), settings, RehearsalWatcher.SILENT);
  }

  @ParameterizedTest
  @CsvSource({
    "polyester_6_0, 2.1, TENSION_NEAR_KNOT_PULL, lets go",
    "polyester_6_0, 3.5, TENSION_NEAR_KNOT_PULL, lets go",
    "polyester_2_0, 9, TENSION_NEAR_TEAR_THROUGH, tears out"
  })
  void isACautionBeforeAndAnEventOfTheYearAfter(
      String thread, double tension_n, CautionKind kind, String happens) throws BadInputException {
    LoadedScenario scenario = tied(thread, tension_n);
    List<String> warned = scenario.warnings().stream().map(Finding::found).toList();
    assertTrue(warned.stream().anyMatch(w -> w.contains("as it is tied")), warned.toString());
    RehearsalResult result = day(scenario);
    assertTrue(result.converged(), result.after().outcome().words());
    assertTrue(
        result.assessment().cautions().stream().anyMatch(c -> c.kind() == kind && c.measured() > 1),
        "caution with the share that was asked for");
    List<String> events = result.timeline().orElseThrow().moments().get(0).events();
    assertTrue(
        events.stream().anyMatch(e -> e.contains("tight") && e.contains(happens)),
        events.toString());
    assertEquals(
        result.before().measures().helixMastoidUpper_mm(),
        result.after().measures().helixMastoidUpper_mm(),
        1e-9,
        "nothing is held");
  }

  @Test
  void aTieThatIsBorneIsNoneOfIt() throws BadInputException {
    LoadedScenario scenario = tied("polyester_6_0", 0.3);
    assertTrue(scenario.warnings().isEmpty(), scenario.warnings().toString());
    RehearsalResult result = day(scenario);
    assertTrue(
        result.assessment().cautions().stream()
            .noneMatch(c -> c.kind() == CautionKind.TENSION_NEAR_KNOT_PULL));
    assertFalse(result.after().threads().get(0).slack());
    assertTrue(result.timeline().orElseThrow().moments().get(0).events().isEmpty());
  }
}
