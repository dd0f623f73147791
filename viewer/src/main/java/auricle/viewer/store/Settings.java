package auricle.viewer.store;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;

/**
 * What the viewer remembers from one time to the next. Settings that cannot be read or written are
 * done without: nothing of the user's work is in them.
 */
public final class Settings {
  private static final int MOST_RECENT = 10;

  private final Path file;
  private final Properties values = new Properties();

  /** The settings kept in a folder. */
  public Settings(Path folder) {
    file = folder.resolve("viewer.properties");
    if (Files.isReadable(file)) {
      try (Reader reader = Files.newBufferedReader(file)) {
        values.load(reader);
      } catch (IOException | IllegalArgumentException e) {
        values.clear();
      }
    }
  }

  /** A text; the other one if there is none. */
  public String text(String key, String otherwise) {
    return values.getProperty(key, otherwise);
  }

  /** A number; the other one if there is none. */
  public double number(String key, double otherwise) {
    try {
      return Double.parseDouble(values.getProperty(key, ""));
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  /** Remembers something. */
  public void set(String key, Object value) {
    values.setProperty(key, value.toString());
  }

  /** Files opened lately, the latest first, as far as they still exist. */
  public List<Path> recent() {
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT; i++) {
      String name = values.getProperty("recent." + i);
      if (name != null && Files.isRegularFile(Path.of(name))) {
        files.add(Path.of(name));
      }
    }
    return files;
  }

  /** Puts a file first among those opened lately. */
  public void opened(Path opened) {
    List<Path> files = recent();
    Path whole = opened.toAbsolutePath().normalize();
    files.remove(whole);
    files.add(0, whole);
    for (int i = 0; i < MOST_RECENT; i++) {
      values.remove("recent." + i);
      if (i < files.size()) {
        values.setProperty("recent." + i, files.get(i).toString());
      }
    }
  }

  /** Writes the settings, if that is possible. */
  public boolean save() {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      StringWriter text = new StringWriter();
      values.store(text, null);
      AtomicFile.write(file, text.toString());
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
