package auricle.yamlfile;

import auricle.diagnostics.Finding;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A JSON Schema (draft 2020-12) among the program's resources, and what it has against a file. */
public final class FileSchema {
  private final JsonNode tree;
  private final Schema schema;

  private FileSchema(JsonNode tree) {
    this.tree = tree;
    this.schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(tree);
  }

  /** Loads a schema from a resource. */
  public static FileSchema load(String resource) {
    return new FileSchema(JsonMapper.shared().readTree(text(resource)));
  }

  /** The text of a schema among the resources. */
  public static String text(String resource) {
    try (InputStream in = FileSchema.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the schema is missing from the program: " + resource);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything that is wrong with a tree; places are JSON pointers. */
  public List<Finding> check(JsonNode file) {
    List<Finding> findings = new ArrayList<>();
    for (Error error : schema.validate(file)) {
      findings.add(new SchemaWords(tree, error).finding());
    }
    return findings;
  }
}
