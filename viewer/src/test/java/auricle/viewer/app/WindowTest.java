package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.store.Settings;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** What the window says and remembers from the first start on. */
class WindowTest extends OpenWindow {
  @Test
  void theFirstStartSaysWhatItIsForAndShowsAnEarAtRest(FxRobot robot) throws Exception {
    wait(() -> robot.lookup("#state").tryQuery().isPresent() && state(robot).contains("At rest"));
    assertTrue(robot.lookup("#welcome").tryQuery().isPresent());
    assertTrue(
        ((Labeled) robot.lookup("#use-line").query()).getText().contains("Not a medical device"));
    picture(robot, "first-start");
    robot.clickOn("#welcome-close");
    assertFalse(robot.lookup("#welcome").tryQuery().isPresent());
  }

  @Test
  void timeIsSteppedAndTheFrameSaysWhere(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> models.showing().result().get().map(r -> !r.times().isEmpty()).orElse(false));
    robot.clickOn("#moment-on");
    wait(() -> state(robot).contains("1 day after the operation"));
    robot.interact(() -> window.bench().openTab("Course"));
    picture(robot, "course");
  }

  @Test
  void theBandIsAskedForAndDrawn(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    wait(() -> state(robot).contains("At rest"));
    robot.interact(() -> window.bench().openTab("Course"));
    robot.clickOn("#work-band");
    wait(() -> models.showing().result().get().map(r -> !r.bands().isEmpty()).orElse(false));
    picture(robot, "band");
  }

  @Test
  void panesAndTextComeBackAsTheUserSetThemAndElseFollowTheScreen(FxRobot robot) {
    Stage stage = (Stage) window.bench().getScene().getWindow();
    Settings settings = new Settings(folder);
    Memory memory = new Memory(stage, settings, models.look(), window.bench());
    robot.interact(memory::recall);
    robot.interact(() -> window.bench().sidePanes(23, 32, stage.getWidth()));
    robot.interact(memory::keep);
    Settings kept = new Settings(folder);
    assertEquals(23, kept.number("pane.left.em", 0), 0.5);
    assertEquals(32, kept.number("pane.right.em", 0), 0.5);
    assertEquals("", kept.text("text.scale", ""), "never set by hand");
    robot.interact(() -> models.look().textScale().set(1.2));
    robot.interact(memory::keep);
    assertEquals(1.2, new Settings(folder).number("text.scale", 0));
  }

  @Test
  void aWindowThatOpensFarTooSmallIsGivenItsSizeAgain(FxRobot robot) {
    Stage stage = (Stage) window.bench().getScene().getWindow();
    Settings settings = new Settings(folder);
    settings.set("window.width", 900.0);
    settings.set("window.height", 700.0);
    Memory memory = new Memory(stage, settings, models.look(), window.bench());
    robot.interact(memory::recall);
    robot.interact(() -> size(stage, 200, 200));
    robot.interact(memory::insist);
    assertEquals(900, stage.getWidth(), 1);
    assertEquals(700, stage.getHeight(), 1);
    robot.interact(() -> size(stage, 600, 700));
    robot.interact(memory::insist);
    assertEquals(600, stage.getWidth(), 1, "what the window manager gave it otherwise stays");
  }

  private static void size(Stage stage, double width, double height) {
    stage.setWidth(width);
    stage.setHeight(height);
  }

  @Test
  void aLessonAsksBeforeItShows(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Lessons"));
    robot.clickOn("#lesson-coupling").clickOn("#lesson-next").clickOn("#lesson-next");
    assertTrue(robot.lookup("#lesson-next").queryButton().isDisabled());
    robot.clickOn("#answer-3");
    wait(() -> !robot.lookup("#lesson-next").queryButton().isDisabled());
    assertEquals("upper suture", models.showing().moment().get().orElseThrow().label());
    picture(robot, "lesson");
  }
}
