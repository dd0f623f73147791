package auricle.viewer.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files that appear whole or not at all. */
public final class AtomicFile {
  private AtomicFile() {}

  /**
   * Writes a text in UTF-8.
   *
   * @throws IOException if it cannot be written; what stood there before is left as it was
   */
  public static void write(Path file, String text) throws IOException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes.
   *
   * @throws IOException if they cannot be written; what stood there before is left as it was
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path target = file.toAbsolutePath().normalize();
    Path beside = target.resolveSibling(start(target) + System.nanoTime());
    try {
      Files.write(beside, bytes);
      Files.move(
          beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /**
   * Removes what writers of a file left behind that were ended in the middle; none may be alive.
   */
  static void sweep(Path file) throws IOException {
    Path target = file.toAbsolutePath().normalize();
    try (DirectoryStream<Path> half =
        Files.newDirectoryStream(target.getParent(), start(target) + "*")) {
      for (Path left : half) {
        Files.deleteIfExists(left);
      }
    }
  }

  private static String start(Path target) {
    return "." + target.getFileName() + "-";
  }
}
