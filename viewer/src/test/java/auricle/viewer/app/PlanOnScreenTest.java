package auricle.viewer.app;

import auricle.viewer.scene.ClinicalView;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Point2D;
import javafx.geometry.Point3D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A plan is worked on at the screen: bites dragged, doses typed, undone. */
class PlanOnScreenTest extends OpenWindow {
  @Test
  void aBiteThatIsDraggedMovesAndCanBePutBack(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> models.steps().choose("upper suture"));
    robot.interact(() -> window.bench().view(ClinicalView.BACK));
    Thread.sleep(1500);
    Node ball = ball(robot);
    double before = level();
    Point2D from = onScreen(ball);
    robot.drag(from, MouseButton.PRIMARY).moveBy(0, 14).moveBy(0, 10).drop();
    wait(() -> level() != before);
    picture(robot, "bite-dragged");
    robot.clickOn("#undo");
    wait(() -> level() == before);
  }

  private Node ball(FxRobot robot) throws TimeoutException {
    wait(() -> window.bench().ball("scapha_upper_level_percent").isPresent());
    WaitForAsyncUtils.waitForFxEvents();
    return window.bench().ball("scapha_upper_level_percent").orElseThrow();
  }

  private static Point2D onScreen(Node ball) {
    Point3D inScene = ball.localToScene(Point3D.ZERO, true);
    var stage = ball.getScene();
    return stage.getRoot().localToScreen(inScene.getX(), inScene.getY());
  }

  private double level() {
    return models.steps().operation().orElseThrow().dose("scapha_upper_level_percent").value();
  }

  @Test
  void aDoseIsTypedAndUndoneByKey(FxRobot robot) throws Exception {
    robot.clickOn("#welcome-close");
    robot.interact(() -> models.steps().choose("upper suture"));
    robot.doubleClickOn("#dose-gap_mm .text-field");
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("7.5").push(KeyCode.ENTER);
    wait(() -> gap() == 7.5);
    robot.interact(() -> window.bench().ear3d().requestFocus());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    wait(() -> gap() != 7.5);
  }

  private double gap() {
    return models.steps().operation().orElseThrow().dose("gap_mm").value();
  }
}
