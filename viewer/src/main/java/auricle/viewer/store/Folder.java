package auricle.viewer.store;

import java.nio.file.Path;
import java.util.Locale;

/** Where the viewer keeps what it remembers: the place each system has for that. */
public final class Folder {
  /** System property that names another folder. */
  public static final String PROPERTY = "auricle.viewer.folder";

  private Folder() {}

  /** The folder; it need not exist yet. */
  public static Path ofUser() {
    String given = System.getProperty(PROPERTY);
    if (given != null) {
      return Path.of(given);
    }
    Path home = Path.of(System.getProperty("user.home"));
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.contains("win")) {
      String roaming = System.getenv("APPDATA");
      return (roaming == null ? home : Path.of(roaming)).resolve("auricle");
    }
    if (system.contains("mac")) {
      return home.resolve("Library/Application Support/auricle");
    }
    String configuration = System.getenv("XDG_CONFIG_HOME");
    return (configuration == null ? home.resolve(".config") : Path.of(configuration))
        .resolve("auricle");
  }
}
