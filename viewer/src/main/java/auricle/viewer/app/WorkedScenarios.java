package auricle.viewer.app;

import auricle.anatomy.EarMeasurements;
import auricle.plan.EarCase;
import auricle.plan.FoldSuture;
import auricle.plan.Plan;
import auricle.plan.Scoring;
import auricle.plan.Target;
import auricle.plan.Tie;
import auricle.plan.TissueChoice;
import auricle.scenario.Scenario;
import auricle.viewer.viewmodel.Document;
import auricle.viewer.viewmodel.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Scenarios to begin from: invented ears, as all that come with the program. */
final class WorkedScenarios {
  private static final String HOME = "/auricle/viewer/lesson/";
  private static final Map<String, String> TITLES =
      Map.of(
          "coupling.scenario.yaml", "Open fold, three sutures",
          "hidden_helix.scenario.yaml", "Upper third pulled too far",
          "spring_back.scenario.yaml", "Sutures with scoring, over a year",
          "lobule.scenario.yaml", "Lobule left behind, then brought in");

  private WorkedScenarios() {}

  /** What the first start shows: an open fold, two sutures and scoring. */
  static Document first() {
    EarMeasurements ear =
        EarMeasurements.normalAdult()
            .withHelixMastoidUpper_mm(21)
            .withHelixMastoidMiddle_mm(22)
            .withFoldAngleUpper_deg(132)
            .withFoldAngleMiddle_deg(128)
            .withAuriculocephalicAngle_deg(44);
    Plan plan =
        Plan.of(
            Scoring.usual("Posterior scoring"),
            suture("Upper fold suture", 76),
            suture("Middle fold suture", 60));
    EarCase ears = new EarCase(ear, TissueChoice.standard(), plan, Target.usual());
    return Document.of(Scenario.of("Open fold (an invented ear)", ears));
  }

  private static FoldSuture suture(String name, double level) {
    return FoldSuture.square(name, level, 4, -4, 10, new Tie.Gap(6), Kind.THREAD);
  }

  /** Names of the others. */
  static List<String> names() {
    return List.of(
        "coupling.scenario.yaml",
        "hidden_helix.scenario.yaml",
        "spring_back.scenario.yaml",
        "lobule.scenario.yaml");
  }

  /** Title of one of them. */
  static String title(String name) {
    return TITLES.getOrDefault(name, name);
  }

  /** Text of one of them. */
  static String text(String name) {
    try (InputStream in = WorkedScenarios.class.getResourceAsStream(HOME + name)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
