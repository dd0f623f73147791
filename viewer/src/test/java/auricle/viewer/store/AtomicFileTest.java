package auricle.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is there whole, or as it was. */
class AtomicFileTest {
  @TempDir private Path folder = Path.of("");

  private List<Path> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }

  @Test
  void aFileIsReplacedWholeAndNothingElseIsLeft() throws IOException {
    Path file = Files.writeString(folder.resolve("s.yaml"), "before, and longer");
    AtomicFile.write(file, "after");
    assertEquals("after", Files.readString(file));
    assertEquals(List.of(file), left());
  }

  @Test
  void whatCannotBeWrittenLeavesNothing() throws IOException {
    Path taken = folder.resolve("s.yaml");
    Path full = Files.createDirectories(taken.resolve("inside"));
    assertThrows(IOException.class, () -> AtomicFile.write(taken, "text"));
    assertTrue(Files.isDirectory(full));
    assertEquals(List.of(taken), left());
  }
}
