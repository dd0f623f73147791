package auricle.scenario;

import auricle.yamlfile.FileSchema;

/** The JSON Schema of scenario files. */
public final class ScenarioSchema {
  /** Resource that holds the schema (JSON Schema, draft 2020-12). */
  public static final String RESOURCE = "/auricle/scenario/scenario-1.schema.json";

  private final FileSchema schema;

  private ScenarioSchema(FileSchema schema) {
    this.schema = schema;
  }

  /** Loads the shipped schema. */
  public static ScenarioSchema load() {
    return new ScenarioSchema(FileSchema.load(RESOURCE));
  }

  /** The text of the shipped schema. */
  public static String text() {
    return FileSchema.text(RESOURCE);
  }

  /** What files are checked against. */
  FileSchema schema() {
    return schema;
  }
}
