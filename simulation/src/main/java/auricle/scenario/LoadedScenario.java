package auricle.scenario;

import auricle.diagnostics.Finding;
import auricle.yamlfile.YamlFile;
import java.util.List;

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

  /** Findings whose places are pointers into the scenario, with lines and columns instead. */
  public List<Finding> locate(List<Finding> findings) {
    return file.locate(findings);
  }
}
