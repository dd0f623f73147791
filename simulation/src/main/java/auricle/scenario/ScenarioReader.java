package auricle.scenario;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Finding;
import auricle.diagnostics.Findings;
import auricle.material.MaterialTables;
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
  private final MaterialTables tables;

  /**
   * @param schema the schema to check against
   * @param tables the material tables that tissue and threads are looked up in
   */
  public ScenarioReader(ScenarioSchema schema, MaterialTables tables) {
    this.schema = schema;
    this.tables = tables;
  }

  /** A reader with the schema and the tables that come with the program. */
  public static ScenarioReader shipped() {
    return new ScenarioReader(ScenarioSchema.load(), MaterialTables.shipped());
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
    ScenarioEntries entries = new ScenarioEntries(file.root(), file.findings(), tables);
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
