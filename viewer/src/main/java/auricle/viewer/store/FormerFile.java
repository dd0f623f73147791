package auricle.viewer.store;

import auricle.yamlfile.YamlComments;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** What a file held that is about to be written over, and that what is written lacks. */
public final class FormerFile {
  private FormerFile() {}

  /**
   * Copies a file whose comments stand among its entries to one of its name with a tilde behind it.
   *
   * @return the copy; none if there is no file or nothing in it that would be lost
   * @throws IOException if it cannot be read or copied
   */
  public static Optional<Path> aside(Path file) throws IOException {
    if (!Files.exists(file) || !YamlComments.of(text(file)).among()) {
      return Optional.empty();
    }
    Path copy = file.resolveSibling(file.getFileName() + "~");
    return Optional.of(Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING));
  }

  /** As far as it is text: what is not is put aside too, since it is no YAML. */
  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
