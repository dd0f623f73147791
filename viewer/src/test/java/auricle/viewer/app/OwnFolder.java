package auricle.viewer.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders for settings and unsaved work of a window that is opened by a test or a script. */
final class OwnFolder {
  private OwnFolder() {}

  /** An empty folder; it is gone when the program ends. */
  static Path make() throws IOException {
    Path folder = Files.createTempDirectory("auricle-window");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder), "remove folder"));
    return folder;
  }

  private static void remove(Path folder) {
    try (Stream<Path> inside = Files.walk(folder)) {
      List<Path> deepestFirst = inside.sorted(Comparator.reverseOrder()).toList();
      for (Path path : deepestFirst) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
