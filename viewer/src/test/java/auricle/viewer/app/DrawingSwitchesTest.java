package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The processor draws where there is no graphics card, and what the user says of it stays. */
@Isolated("changes a property of the whole program")
class DrawingSwitchesTest {
  private static final String UPLOADING = "prism.forceUploadingPainter";

  @TempDir private Path folder = Path.of("");
  private String before = "";

  @BeforeEach
  void keep() {
    before = System.getProperty(UPLOADING, "");
  }

  @AfterEach
  void restore() {
    if (before.isEmpty()) {
      System.clearProperty(UPLOADING);
    } else {
      System.setProperty(UPLOADING, before);
    }
  }

  @Test
  void aLinuxWithoutCardsIsDrawnByTheProcessor() {
    assertTrue(DrawingSwitches.isDrawnByProcessor("Linux", folder.resolve("none")));
    assertFalse(DrawingSwitches.isDrawnByProcessor("Linux", folder));
    assertFalse(DrawingSwitches.isDrawnByProcessor("Mac OS X", folder.resolve("none")));
    assertFalse(DrawingSwitches.isDrawnByProcessor("Windows 11", folder.resolve("none")));
  }

  @Test
  void whatWasGivenOnTheCommandLineStays() {
    System.setProperty(UPLOADING, "as the user says");
    DrawingSwitches.set();
    assertEquals("as the user says", System.getProperty(UPLOADING));
  }
}
