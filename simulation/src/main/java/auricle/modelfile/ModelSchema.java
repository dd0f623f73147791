package auricle.modelfile;

import auricle.diagnostics.Finding;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON Schema of model files and what it has against a file. */
public final class ModelSchema {
  /** Resource that holds the schema (JSON Schema, draft 2020-12). */
  public static final String RESOURCE = "/auricle/modelfile/model-1.schema.json";

  private final JsonNode tree;
  private final Schema schema;

  private ModelSchema(JsonNode tree) {
    this.tree = tree;
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(tree);
  }

  /** Loads the shipped schema. */
  public static ModelSchema load() {
    return new ModelSchema(JsonMapper.shared().readTree(text()));
  }

  /** The text of the shipped schema. */
  public static String text() {
    try (InputStream in = ModelSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the schema is missing from the program");
      }
      return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything that is wrong with a model; places are JSON pointers. */
  List<Finding> check(JsonNode model) {
    List<Finding> findings = new ArrayList<>();
    for (Error error : schema.validate(model)) {
      findings.add(new SchemaWords(tree, error).finding());
    }
    return findings;
  }
}
