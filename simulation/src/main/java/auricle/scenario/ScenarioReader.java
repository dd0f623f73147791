package auricle.scenario;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.yamlfile.YamlFile;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads scenario files. The schema is checked first; what passes it is read into a {@link
 * Scenario}, with bounds and sense checked on the way. All findings are told at once.
 */
public final class ScenarioReader {
  private static final int LARGEST_MB = 1;

  private final ScenarioSchema schema;

  /**
   * @param schema the schema to check against
   */
  public ScenarioReader(ScenarioSchema schema) {
    this.schema = schema;
  }

  /**
   * Reads a file.
   *
   * @throws BadInputException if it cannot be read or used
   */
  public LoadedScenario read(Path file) throws BadInputException {
    return read(
        String.valueOf(file.getFileName()), YamlFile.text(file, "a scenario file", LARGEST_MB));
  }

  /**
   * Reads a text.
   *
   * @param name of the file, for messages
   * @throws BadInputException if it cannot be used
   */
  public LoadedScenario read(String name, String text) throws BadInputException {
    YamlFile file = YamlFile.open(name, text, schema.schema(), Identity::look);
    stopIfAnotherFormat(file);
    ScenarioEntries entries = new ScenarioEntries(file.root(), file.findings());
    Scenario scenario = entries.scenario();
    Findings findings = new Findings();
    findings.addAll(file.findings());
    findings.addAll(entries.findings());
    file.stopIfErrors(findings);
    return new LoadedScenario(scenario, file, findings.list());
  }

  /** Of a file in another format nothing else can be said. */
  private static void stopIfAnotherFormat(YamlFile file) throws BadInputException {
    List<Finding> format =
        file.findings().stream().filter(f -> f.where().equals("/format")).toList();
    if (!format.isEmpty()) {
      throw new BadInputException(file.locate(format));
    }
  }
}
