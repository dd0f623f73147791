package auricle.scenario;

import auricle.anatomy.Side;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.material.MaterialTables;
import auricle.yamlfile.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A scenario from the tree of its file. */
final class ScenarioEntries {
  private final Entry root;
  private final boolean sound;
  private final MaterialTables tables;
  private final Findings findings = new Findings();

  /**
   * @param root of the tree, without what the schema objects to
   * @param objections of the schema
   * @param tables that tissue and threads are looked up in
   */
  ScenarioEntries(Entry root, List<Finding> objections, MaterialTables tables) {
    this.root = root;
    this.tables = tables;
    this.sound = objections.stream().noneMatch(Finding::isError);
  }

  /** What is wrong or doubtful beside the schema's objections. */
  List<Finding> findings() {
    return findings.list();
  }

  Scenario scenario() {
    List<ScenarioEar> ears = new ArrayList<>();
    for (EarPart part : parts()) {
      ScenarioEar ear = new EarEntries(part, sound, findings).ear();
      new TissueCheck(tables, part.at())
          .findings(ear.ear())
          .forEach(f -> findings.add(part.settle(f)));
      ears.add(ear);
    }
    List<Moment> times =
        root.items("times").stream().flatMap(e -> Moment.time(e.string()).stream()).toList();
    return new Scenario(root.text("title"), root.text("notes"), ears, times);
  }

  private List<EarPart> parts() {
    List<EarPart> parts = new ArrayList<>();
    for (Side side : Side.values()) {
      String key = side.name().toLowerCase(Locale.ROOT);
      if (root.has(key)) {
        parts.add(new EarPart(root, key, side));
      }
    }
    if (parts.isEmpty()) {
      boolean left = root.get("ear").text("side").equals("left");
      return List.of(new EarPart(root, "", left ? Side.LEFT : Side.RIGHT));
    }
    parts.forEach(this::checkSide);
    return parts;
  }

  /** In a pair the block says which ear it is. */
  private void checkSide(EarPart part) {
    part.find("ear", "side")
        .filter(e -> !e.string().equals(part.key()))
        .ifPresent(
            e ->
                findings.error(
                    e.at(),
                    "side " + e.string() + " for the ear under '" + part.key() + "'",
                    "two ears of different sides",
                    "Leave 'side' out: 'right' and 'left' say which ear it is."));
  }
}
