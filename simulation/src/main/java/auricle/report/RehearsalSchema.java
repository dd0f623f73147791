package auricle.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema of the result of a rehearsal. */
public final class RehearsalSchema {
  private static final String RESOURCE = "/auricle/report/rehearsal-1.schema.json";

  private RehearsalSchema() {}

  /** The schema, word for word. */
  public static String text() {
    try (InputStream in = RehearsalSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the schema of results is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
