package auricle.viewer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.app.OtherProcess;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that is killed while it writes a copy leaves the copy before, or the new one, whole.
 */
class KilledWhileWritingTest {
  private static final int KILLS = 4;

  @Test
  void aCopyIsWholeWhenTheProgramIsKilledInTheMiddleOfWritingOne(@TempDir Path folder)
      throws Exception {
    boolean halfWritten = false;
    for (int kill = 0; kill < KILLS || !halfWritten && kill < 10 * KILLS; kill++) {
      try (OtherProcess writer =
          OtherProcess.of(List.of(), WritesUntilKilled.class, folder.toString())) {
        writer.says("writing");
        Thread.sleep(37L * kill % 101);
        writer.kill();
      }
      halfWritten |= beside(folder) > 0;
      Recovery next = Recovery.claim(folder);
      String text = next.left().orElseThrow().text();
      next.letGo();
      int number = Integer.parseInt(text.substring("begin ".length(), text.indexOf('\n')));
      assertEquals(WritesUntilKilled.copy(number).length(), text.length());
      assertEquals(WritesUntilKilled.copy(number), text);
    }
    assertTrue(halfWritten, "no kill met the program in the middle of a copy");
  }

  /** Files that a writer had not finished. */
  private static long beside(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.getFileName().toString().startsWith(".unsaved")).count();
    }
  }

  @Test
  void whatWasHalfWrittenIsClearedAwayAndTheCopyStays(@TempDir Path folder) throws IOException {
    new Recovery(folder).keep(java.util.Optional.empty(), "whole\n");
    Files.writeString(folder.resolve(".unsaved.yaml-12345"), "hal");
    Recovery again = Recovery.claim(folder);
    assertEquals(0, beside(folder));
    assertEquals("whole\n", again.left().orElseThrow().text());
    again.letGo();
  }

  @Test
  void twoViewersKeepTheirWorkApartAndBothIsFoundAgain(@TempDir Path folder) throws IOException {
    Recovery one = Recovery.claim(folder);
    Recovery two = Recovery.claim(folder);
    one.keep(java.util.Optional.empty(), "of one\n");
    two.keep(java.util.Optional.empty(), "of two\n");
    one.forget();
    two.letGo();
    Recovery third = Recovery.claim(folder);
    assertEquals("of two\n", third.left().orElseThrow().text());
    one.letGo();
    third.letGo();
  }

  @Test
  void aCopyThatCannotBeReadIsPutAsideNotWrittenOver(@TempDir Path folder) throws IOException {
    Recovery recovery = new Recovery(folder);
    recovery.keep(java.util.Optional.empty(), "not a scenario\n");
    Path aside = recovery.setAside();
    assertTrue(Files.readString(aside).contains("not a scenario"));
    recovery.forget();
    assertTrue(Files.exists(aside));
    assertNotEquals(java.util.Optional.of("not a scenario\n"), recovery.left().map(l -> l.text()));
  }
}
