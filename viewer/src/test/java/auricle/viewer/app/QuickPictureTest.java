package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.scene.EarScene;
import auricle.viewer.scene.Orbit;
import auricle.viewer.scene.StandInEar;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What moves is drawn without smoothing, and finely once it rests; nothing is lost on the way. */
@ExtendWith({NeedsDisplay.class, ApplicationExtension.class})
@SuppressWarnings("NullAway.Init") // the scene is made when the toolkit has started
class QuickPictureTest {
  private final Orbit from = Orbit.at(ClinicalView.SIDE);
  private EarScene ear;

  @Start
  void start(Stage stage) {
    ear = new EarScene();
    ear.show(StandInEar.of(0), false);
    stage.setScene(new Scene(ear.picture(), 400, 400));
    stage.show();
  }

  private SubScene shown() {
    List<SubScene> seen =
        ear.picture().getChildrenUnmodifiable().stream()
            .map(SubScene.class::cast)
            .filter(SubScene::isVisible)
            .toList();
    assertEquals(1, seen.size());
    return seen.get(0);
  }

  private void holds(SceneAntialiasing smoothing) {
    assertSame(smoothing, shown().getAntiAliasing());
    assertTrue(shown().getRoot().lookup("#ear") == ear.earNode(), "the ear is in what is shown");
    assertTrue(shown().getCamera() != null, "and seen by the eye");
    assertEquals(ear.picture().getWidth(), shown().getBoundsInParent().getWidth(), 1);
  }

  private void rests() throws TimeoutException {
    WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> !ear.picture().isMoving());
  }

  @Test
  void aTurnedEarIsDrawnFinelyOnceItRests(FxRobot robot) throws Exception {
    robot.interact(() -> holds(SceneAntialiasing.BALANCED));
    robot.interact(
        () -> {
          ear.sweep(from.turned(10, 0));
          holds(SceneAntialiasing.DISABLED);
        });
    rests();
    robot.interact(() -> holds(SceneAntialiasing.BALANCED));
  }

  @Test
  void anEyeThatIsPutSomewhereEndsTheMoveAtOnce(FxRobot robot) {
    robot.interact(() -> ear.sweep(from.turned(10, 0)));
    robot.interact(
        () -> {
          ear.look(from);
          holds(SceneAntialiasing.BALANCED);
        });
  }

  @Test
  void anEarThatMovedIsDrawnSoonerThanFinelyAndOneThatDidNotIsLeft(FxRobot robot) throws Exception {
    robot.interact(() -> ear.show(StandInEar.of(0), false));
    assertFalse(ear.picture().isMoving());
    robot.interact(
        () -> {
          ear.show(StandInEar.of(0.2), false);
          holds(SceneAntialiasing.DISABLED);
        });
    rests();
    robot.interact(() -> holds(SceneAntialiasing.BALANCED));
  }

  private float[] ghost() {
    MeshView seen = (MeshView) ear.veils().getChildren().get(0);
    return ((TriangleMesh) seen.getMesh()).getPoints().toArray(null);
  }

  @Test
  void theGhostIsLaidAnewWhenTheEarRests(FxRobot robot) throws Exception {
    robot.interact(() -> ear.showGhost(Optional.of(StandInEar.of(1))));
    float[] first = ghost();
    robot.interact(
        () -> {
          ear.show(StandInEar.of(0.8), false);
          ear.showGhost(Optional.of(StandInEar.of(1)));
          assertArrayEquals(first, ghost());
        });
    rests();
    robot.interact(
        () ->
            assertFalse(
                Arrays.equals(first, ghost()),
                "where it is near the ear it hides within its wall"));
  }
}
