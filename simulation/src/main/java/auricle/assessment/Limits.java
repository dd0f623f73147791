package auricle.assessment;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The table of limits, {@code limits.csv} beside this class. */
public final class Limits {
  private static final String RESOURCE = "limits.csv";
  private static final int FIELDS = 5;
  private final Map<String, Limit> limits = new LinkedHashMap<>();

  private Limits(List<String> lines) {
    lines.stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .skip(1)
        .forEach(this::add);
  }

  /** The table that comes with the program. */
  public static Limits shipped() {
    try (InputStream in = Limits.class.getResourceAsStream(RESOURCE)) {
      byte[] bytes = Objects.requireNonNull(in, RESOURCE).readAllBytes();
      return new Limits(new String(bytes, StandardCharsets.UTF_8).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(RESOURCE + " cannot be read", e);
    }
  }

  private void add(String line) {
    String[] f = line.split(";", -1);
    if (f.length != FIELDS || f[3].isBlank() || f[4].isBlank()) {
      throw new IllegalStateException(RESOURCE + ": needs five fields with a source: " + line);
    }
    limits.put(f[0], new Limit(f[0], Double.parseDouble(f[1]), f[2], f[3], f[4]));
  }

  /** All limits in the order of the table. */
  public List<Limit> all() {
    return List.copyOf(limits.values());
  }

  /**
   * A limit by its key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Limit of(String key) {
    Limit limit = limits.get(key);
    if (limit == null) {
      throw new IllegalArgumentException("no limit '" + key + "' in " + RESOURCE);
    }
    return limit;
  }
}
