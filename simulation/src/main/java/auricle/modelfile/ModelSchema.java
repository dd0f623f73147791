package auricle.modelfile;

import auricle.yamlfile.FileSchema;

/** The JSON Schema of model files. */
public final class ModelSchema {
  /** Resource that holds the schema (JSON Schema, draft 2020-12). */
  public static final String RESOURCE = "/auricle/modelfile/model-1.schema.json";

  private final FileSchema schema;

  private ModelSchema(FileSchema schema) {
    this.schema = schema;
  }

  /** Loads the shipped schema. */
  public static ModelSchema load() {
    return new ModelSchema(FileSchema.load(RESOURCE));
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
