package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.store.Folder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The program itself, started, worked with, killed and started again. */
@ExtendWith(NeedsDisplay.class)
class KilledViewerTest {
  /** Changes are on the disk after a quarter of a second; a busy machine may take longer. */
  private static final long KEPT_WITHIN_MS = 10_000;

  @TempDir Path folder;

  private OtherProcess viewer(String... arguments) throws IOException {
    List<String> options =
        List.of("-Xmx1g", "-Dprism.forceGPU=true", "-D" + Folder.PROPERTY + "=" + folder);
    return OtherProcess.of(options, ViewerOnOrders.class, arguments);
  }

  @Test
  void editsAreThereAgainAfterAKillAndAnotherKill() throws Exception {
    Path file = folder.resolve("mine.yaml");
    Files.writeString(file, WorkedScenarios.text("open_fold.yaml"));
    try (OtherProcess viewer = viewer(file.toString())) {
      assertEquals("ticked false", viewer.ask("press #do-step-1"));
      assertEquals("7.50", viewer.ask("type #dose-gap_mm 7.5"));
      kept("gap_mm: 7.5");
      viewer.kill();
    }
    try (OtherProcess again = viewer()) {
      assertTrue(again.ask("title").startsWith("•"), "the changes are not in a file");
      assertTrue(again.ask("title").contains("mine.yaml"));
      assertEquals("ticked false", again.ask("read #do-step-1"));
      assertEquals("7.50", again.ask("read #dose-gap_mm"));
      assertEquals("8.00", again.ask("type #dose-gap_mm 8"));
      kept("gap_mm: 8");
      again.kill();
    }
    try (OtherProcess third = viewer()) {
      assertEquals("8.00", third.ask("read #dose-gap_mm"));
      assertEquals("done", third.ask("choose Save"));
      assertFalse(third.ask("title").startsWith("•"));
    }
    assertTrue(Files.readString(file).contains("gap_mm: 8"), "saved where it belongs");
    assertEquals(List.of(), copies(), "nothing is left to recover");
  }

  /** Waits until a copy holds some words. */
  private void kept(String words) throws IOException, InterruptedException {
    long end = System.nanoTime() + KEPT_WITHIN_MS * 1_000_000;
    while (System.nanoTime() < end) {
      for (Path copy : copies()) {
        if (Files.readString(copy).contains(words)) {
          return;
        }
      }
      Thread.sleep(20);
    }
    throw new AssertionError("no copy holds \"" + words + "\"");
  }

  private List<Path> copies() throws IOException {
    List<Path> found = new ArrayList<>();
    try (var all = Files.newDirectoryStream(folder, "unsaved*.yaml")) {
      all.forEach(found::add);
    }
    return found;
  }
}
