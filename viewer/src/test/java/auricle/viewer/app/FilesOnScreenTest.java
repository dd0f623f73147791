package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.store.Recovery;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Files are opened, dragged in, refused in words, and found again after a kill. */
class FilesOnScreenTest extends OpenWindow {
  @Test
  void aFileThatCannotBeReadIsToldAndTheDeskStays(FxRobot robot) throws Exception {
    Path file =
        Files.writeString(folder.resolve("bad.yaml"), "format: auricle-scenario/1\nere: 1\n");
    String before = models.desk().document().get().title();
    robot.interact(() -> window.files().open(file));
    assertEquals(before, models.desk().document().get().title());
    assertTrue(window.files().messages().toString().contains("bad.yaml"));
    assertTrue(robot.lookup("#messages").query().isVisible());
  }

  @Test
  void aScenarioIsDraggedOntoTheWindow(FxRobot robot) throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("dragged.yaml"), WorkedScenarios.text("lobule_unmasked.yaml"));
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    assertEquals(Optional.of(file), window.files().file().get());
    assertTrue(models.desk().document().get().title().contains("lobule"));
  }

  @Test
  void aBadFileDraggedOntoTheWindowIsToldInSentencesAndTheDeskStays(FxRobot robot)
      throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("dragged_bad.yaml"), "format: auricle-scenario/1\nere: 1\n");
    String before = models.desk().document().get().title();
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(before, models.desk().document().get().title());
    assertTrue(robot.lookup("#messages").query().isVisible());
    assertTrue(window.files().messages().get(0).contains("dragged_bad.yaml"));
    assertTrue(window.files().messages().toString().contains("line 2"));
    picture(robot, "bad-file-dragged");
  }

  @Test
  void aLessonIsDraggedOntoTheWindow(FxRobot robot) throws Exception {
    Files.writeString(folder.resolve("plain.yaml"), WorkedScenarios.text("lobule_unmasked.yaml"));
    Path file =
        Files.writeString(
            folder.resolve("lesson.yaml"),
            """
            format: auricle-lesson/1
            title: A lesson of one page
            scenario: plain.yaml
            pages:
              - show: before
                view: front
                text: Look at the lobule.
            """);
    robot.interact(() -> DraggedFiles.drop(file, window.bench().getScene()));
    assertEquals("Lessons", window.bench().openTab());
    assertTrue(robot.lookup("#lesson-end").tryQuery().isPresent());
  }

  @Test
  void unsavedWorkIsThereAgainAfterAKill(FxRobot robot) throws Exception {
    robot.interact(() -> models.steps().enable(0, false));
    robot.interact(() -> window.files().keep());
    Recovery.Left left = new Recovery(folder).left().orElseThrow();
    robot.interact(() -> models.desk().undo());
    assertNotEquals(0, models.steps().plan().get().enabled().size());
    robot.interact(() -> window.files().recover(left));
    assertFalse(models.steps().plan().get().operations().get(0).enabled());
    assertTrue(models.desk().unsaved().get());
  }
}
