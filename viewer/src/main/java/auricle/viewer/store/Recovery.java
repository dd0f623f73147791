package auricle.viewer.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A copy of unsaved work beside the settings, so that nothing is lost when the program ends without
 * being asked to. The first line is a comment with the file it belongs to.
 */
public final class Recovery {
  private static final String HEAD = "# unsaved changes to: ";

  private final Path file;

  /**
   * What was left behind.
   *
   * @param belongsTo file that was being worked on; empty if it had none
   * @param text of the scenario
   */
  public record Left(Optional<Path> belongsTo, String text) {}

  /** The copy kept in a folder. */
  public Recovery(Path folder) {
    file = folder.resolve("unsaved.yaml");
  }

  /**
   * Keeps a copy.
   *
   * @throws IOException if it cannot be written
   */
  public void keep(Optional<Path> belongsTo, String text) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    AtomicFile.write(file, HEAD + belongsTo.map(Path::toString).orElse("") + "\n" + text);
  }

  /** What an earlier run left behind, if anything. */
  public Optional<Left> left() {
    try {
      String all = Files.readString(file);
      int end = all.indexOf('\n');
      if (!all.startsWith(HEAD) || end < 0) {
        return Optional.empty();
      }
      String name = all.substring(HEAD.length(), end);
      Optional<Path> path = name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
      return Optional.of(new Left(path, all.substring(end + 1)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Forgets the copy: the work is in a file, or not wanted. */
  public void forget() {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      file.toFile().deleteOnExit();
    }
  }
}
