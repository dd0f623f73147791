package auricle.viewer.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Side;
import auricle.plan.EarCase;
import auricle.plan.Plan;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import auricle.scenario.Scenario;
import auricle.scenario.ScenarioReader;
import auricle.viewer.store.Recovery;
import auricle.viewer.store.Settings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is saved holds what was opened, or says what it does not and where that is. */
class FilesTest {
  private static final String HEAD = "# An invented ear.\n#\n# Idea: to keep what it teaches.\n";
  private static final String ENTRIES =
      "format: auricle-scenario/1\ntitle: kept\near:\n  side: right\n  age_years: 8\nplan:\n  - scoring: {}\n";

  @TempDir private Path folder = Path.of("");

  private final Desk desk =
      new Desk(
          Document.of(
              Scenario.of(
                  "first on the desk",
                  new EarCase(
                      EarMeasurements.normalAdult(),
                      TissueChoice.standard(),
                      Plan.of(),
                      Target.usual()))));

  private Files files() {
    return new Files(desk, new Settings(folder), new Recovery(folder), ScenarioReader.shipped());
  }

  private Path written(String text) throws IOException {
    return java.nio.file.Files.writeString(folder.resolve("ear.yaml"), text);
  }

  private static String read(Path file) throws IOException {
    return java.nio.file.Files.readString(file);
  }

  @Test
  void theHeadOfAFileIsKept() throws IOException {
    Files files = files();
    Path file = written(HEAD + ENTRIES);
    assertTrue(files.open(file), files.messages().toString());
    assertTrue(files.save());
    assertTrue(read(file).startsWith(HEAD + "format: auricle-scenario/1\n"), read(file));
    assertEquals(List.of(), files.messages());
    assertTrue(files.saveAs(folder.resolve("other.yaml")));
    assertTrue(read(folder.resolve("other.yaml")).startsWith(HEAD));
    assertFalse(java.nio.file.Files.exists(folder.resolve("ear.yaml~")));
  }

  @Test
  void aFileWithCommentsAmongItsEntriesIsPutAsideAndThatIsSaid() throws IOException {
    Files files = files();
    String before = HEAD + ENTRIES.replace("age_years: 8", "age_years: 8 # before school");
    Path file = written(before);
    assertTrue(files.open(file), files.messages().toString());
    assertTrue(files.save());
    Path aside = folder.resolve("ear.yaml~");
    assertEquals(before, read(aside));
    assertTrue(files.messages().get(0).contains(aside.toString()), files.messages().toString());
    assertTrue(files.save());
    assertEquals(List.of(), files.messages());
    String again = before.replace("school", "the holidays");
    written(again);
    assertTrue(files.save());
    assertEquals(before, read(aside), "what was put aside is not written over");
    assertEquals(again, read(folder.resolve("ear.yaml~2")));
  }

  @Test
  void theHeadIsKeptOverAKill() throws IOException {
    Files files = files();
    files.open(written(HEAD + ENTRIES));
    desk.edit(d -> d.onSide(Side.LEFT), "");
    files.keep();
    Files after = files();
    assertTrue(after.recover(after.left().orElseThrow()), after.messages().toString());
    assertTrue(after.save(), after.messages().toString());
    String saved = read(folder.resolve("ear.yaml"));
    assertTrue(saved.startsWith(HEAD), saved);
    assertTrue(saved.contains("side: left"), saved);
  }

  @Test
  void workGoesOnInTheFolderOfTheFileElseOfOneOpenedLately() throws IOException {
    Files files = files();
    assertEquals(Optional.empty(), files.folder());
    assertTrue(files.open(written(ENTRIES)));
    assertEquals(Optional.of(folder), files.folder());
    assertTrue(files.openText("of no file", ENTRIES));
    assertEquals(Optional.of(folder), files.folder());
  }
}
