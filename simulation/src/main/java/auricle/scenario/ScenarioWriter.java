package auricle.scenario;

import auricle.plan.TissueChoice;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;

/**
 * Writes scenarios as YAML. Every measurement is written out, so that the file says the same when
 * the normal ears change; of the target only what was given. Comments of a file that was read
 * before are not kept.
 */
public final class ScenarioWriter {
  private static final YAMLMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER)
          .enable(YAMLWriteFeature.MINIMIZE_QUOTES)
          .enable(YAMLWriteFeature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
          .enable(YAMLWriteFeature.INDENT_ARRAYS_WITH_INDICATOR)
          .build();

  private ScenarioWriter() {}

  /** The text of a scenario file. */
  public static String text(Scenario scenario) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", "auricle-scenario/1");
    put(root, "title", scenario.title());
    put(root, "notes", scenario.notes());
    if (scenario.ears().size() == 1) {
      ScenarioEar ear = scenario.ears().get(0);
      root.set("ear", EarNodes.ear(ear.ear().ear(), true));
      sections(root, ear, Part.values());
    } else {
      pair(root, scenario.ears());
    }
    scenario.times().forEach(t -> root.withArray("/times").add(t.words()));
    return YAML.writeValueAsString(root);
  }

  private static void put(ObjectNode node, String key, String text) {
    if (!text.isEmpty()) {
      node.put(key, text);
    }
  }

  /** What both ears share stands at the top. */
  private static void pair(ObjectNode root, List<ScenarioEar> ears) {
    for (Part part : Part.values()) {
      JsonNode first = part.node.apply(ears.get(0));
      boolean shared = ears.stream().allMatch(e -> part.node.apply(e).equals(first));
      if (shared) {
        sections(root, ears.get(0), part);
      }
      for (ScenarioEar ear : ears) {
        ObjectNode side = root.withObject("/" + ear.side().name().toLowerCase(Locale.ROOT));
        if (part == Part.TISSUE) {
          side.set("ear", EarNodes.ear(ear.ear().ear(), false));
        }
        if (!shared) {
          sections(side, ear, part);
        }
      }
    }
  }

  private static void sections(ObjectNode node, ScenarioEar ear, Part... parts) {
    for (Part part : parts) {
      JsonNode section = part.node.apply(ear);
      if (!section.isEmpty() || part == Part.PLAN) {
        node.set(part.key, section);
      }
    }
  }

  /** Sections of an ear beside its measurements, in the order of files. */
  private enum Part {
    TISSUE("tissue", e -> EarNodes.tissue(e.ear().tissue())),
    PRESS("press_test", e -> press(e.ear().tissue())),
    PLAN("plan", e -> OperationNodes.plan(e.ear().plan(), e.ear().ear().height_mm())),
    TARGET("target", e -> EarNodes.target(e.ear().target())),
    EXPECTED("expected", e -> ExpectedNodes.expected(e.expected()));

    private final String key;
    private final transient Function<ScenarioEar, JsonNode> node;

    Part(String key, Function<ScenarioEar, JsonNode> node) {
      this.key = key;
      this.node = node;
    }

    private static JsonNode press(TissueChoice tissue) {
      return tissue
          .press()
          .<JsonNode>map(EarNodes::press)
          .orElseGet(JsonNodeFactory.instance::objectNode);
    }
  }
}
