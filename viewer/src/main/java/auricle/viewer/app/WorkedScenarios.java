package auricle.viewer.app;

import auricle.diagnostics.BadInputException;
import auricle.scenario.ScenarioReader;
import auricle.viewer.viewmodel.Document;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** The scenarios that come with the program, to begin from: invented ears, one idea each. */
final class WorkedScenarios {
  private static final String HOME = "/auricle/viewer/scenarios/";
  private static final String FIRST = "open_fold.yaml";

  private WorkedScenarios() {}

  /** What the first start shows: an open fold, scored and sutured. */
  static Document first(ScenarioReader reader) {
    try {
      return Document.of(reader.read(FIRST, text(FIRST)).scenario());
    } catch (BadInputException e) {
      throw new IllegalStateException("a shipped scenario is damaged", e);
    }
  }

  /** Titles by file name, in the order of the menu. */
  static Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    titles.put(FIRST, "Open fold");
    titles.put("deep_bowl.yaml", "Deep bowl");
    titles.put("fold_and_bowl.yaml", "Open fold and deep bowl");
    titles.put("worked_to_target.yaml", "Worked to the balance aimed for");
    titles.put("lobule_unmasked.yaml", "Lobule unmasked, then controlled");
    titles.put("upper_too_far.yaml", "Upper third pulled too far");
    titles.put("scoring_face.yaml", "Posterior against anterior scoring");
    titles.put("full_thickness_cut.yaml", "Full-thickness cut against scoring");
    titles.put("rim_wedge.yaml", "Rim wedge, simply closed");
    titles.put("concha_mastoid_alone.yaml", "Concha-mastoid suture alone");
    titles.put("skin_strip_alone.yaml", "Skin strip alone");
    titles.put("bolster_alone.yaml", "Bolster alone");
    titles.put("two_ears_that_differ.yaml", "Two ears that differ");
    titles.put("thick_adult_thin_child.yaml", "Thick adult against thin child");
    return titles;
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
