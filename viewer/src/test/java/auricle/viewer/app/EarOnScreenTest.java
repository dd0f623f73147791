package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.viewmodel.Aim;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** Measurements, target and the other ear are changed at the screen. */
class EarOnScreenTest extends OpenWindow {
  @Test
  void aMeasurementThatCannotBeIsSaidBesideItsFieldAndUndone(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Ear"));
    robot.doubleClickOn("#field-height_mm .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("630").push(KeyCode.ENTER);
    wait(() -> measuredHeight() == 630);
    wait(() -> !findings(robot, "height_mm").isEmpty());
    picture(robot, "ear-height-impossible");
    robot.interact(() -> models.desk().undo());
    wait(() -> findings(robot, "height_mm").isEmpty());
  }

  private double measuredHeight() {
    return models.desk().document().get().ear().ear().height_mm();
  }

  private static java.util.List<Node> findings(FxRobot robot, String field) {
    return robot.lookup("#findings-" + field).queryAs(javafx.scene.layout.VBox.class).getChildren();
  }

  @Test
  void theTargetIsChangedOnTheScreen(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Target"));
    robot.doubleClickOn("#field-helix_mastoid_upper_mm-from .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("9").push(KeyCode.ENTER);
    wait(() -> Aim.UPPER.of(models.desk().document().get().ear().target()).low() == 9);
    picture(robot, "target");
  }

  @Test
  void bothEarsAreJudgedFromTheFront(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(
        () -> window.files().openText("pair", WorkedScenarios.text("two_ears_that_differ.yaml")));
    robot.interact(() -> window.bench().openTab("Both ears"));
    wait(() -> models.other().result().get().isPresent());
    picture(robot, "both-ears");
    robot.interact(() -> window.bench().openTab("Balance"));
  }

  @Test
  void theOtherEarIsAddedAndTakenOutOnTheScreen(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> window.bench().openTab("Ear"));
    robot.clickOn("#side-left");
    assertTrue(models.desk().document().get().left());
    robot.clickOn("#other-ear");
    assertEquals(2, models.desk().document().get().scenario().ears().size());
    wait(() -> state(robot).contains("At rest"));
    picture(robot, "ear-of-a-pair");
    robot.clickOn("#other-ear");
    assertEquals(1, models.desk().document().get().scenario().ears().size());
    assertTrue(models.desk().document().get().left());
  }
}
