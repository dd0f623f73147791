package auricle.viewer.store;

import auricle.yamlfile.YamlComments;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What a file held that is about to be written over, and that what is written lacks. */
public final class FormerFile {
  private FormerFile() {}

  /**
   * Copies a file whose comments stand among its entries to one of its name with a tilde behind it,
   * and a number if there is such a one.
   *
   * @return the copy; none if there is no file or nothing in it that would be lost
   * @throws IOException if it cannot be read or copied
   */
  public static Optional<Path> aside(Path file) throws IOException {
    if (!Files.exists(file) || !YamlComments.of(text(file)).among()) {
      return Optional.empty();
    }
    return Optional.of(Files.copy(file, free(file)));
  }

  /** A name that nothing has yet: what was put aside before stays. */
  private static Path free(Path file) {
    Path copy = file.resolveSibling(file.getFileName() + "~");
    for (int i = 2; Files.exists(copy); i++) {
      copy = file.resolveSibling(file.getFileName() + "~" + i);
    }
    return copy;
  }

  /** As far as it is text: what is not is put aside too, since it is no YAML. */
  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
