package auricle.scenario;

import auricle.anatomy.Side;
import auricle.diagnostics.Finding;
import auricle.yamlfile.YamlFile;
import java.util.List;
import java.util.Locale;

/** A scenario with the file it came from, so that later findings can name line and column. */
public final class LoadedScenario {
  private final Scenario scenario;
  private final YamlFile file;
  private final List<Finding> warnings;

  LoadedScenario(Scenario scenario, YamlFile file, List<Finding> warnings) {
    this.scenario = scenario;
    this.file = file;
    this.warnings = file.locate(warnings);
  }

  /** The scenario. */
  public Scenario scenario() {
    return scenario;
  }

  /** Name of the file. */
  public String name() {
    return file.name();
  }

  /** Text of the file, word for word. */
  public String text() {
    return file.text();
  }

  /** What is doubtful about it, at lines and columns. */
  public List<Finding> warnings() {
    return warnings;
  }

  /**
   * Findings about one ear whose places are JSON pointers below it, such as {@code
   * /plan/0/scoring/depth_fraction}, with lines and columns instead.
   */
  public List<Finding> locate(Side side, List<Finding> findings) {
    String name = side.name().toLowerCase(Locale.ROOT);
    String key = file.root().has(name) ? name : "";
    EarPart part = new EarPart(file.root(), key, side);
    return file.locate(
        findings.stream()
            .map(f -> f.where().startsWith("/") ? f.at(part.at() + f.where()) : f)
            .map(part::settle)
            .toList());
  }
}
