package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.TabPane;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** In a small window with large type nothing is cut short and the ear keeps its place. */
class LargeTextTest extends OpenWindow {
  private static final double LARGE = 1.6;

  @Override
  void opened() {
    window.bench().closeWelcome();
    models.look().textScale().set(LARGE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Plan", "Ear", "Target", "Balance", "Section", "Both ears", "Course", "Lessons"})
  void noWordsAreCutShort(String tab, FxRobot robot) throws Exception {
    wait(() -> state(robot).contains("At rest"));
    robot.interact(() -> window.bench().openTab(tab));
    Thread.sleep(400); // panes are drawn some frames later
    List<String> cut = new ArrayList<>();
    robot.interact(() -> collect(window.bench(), cut));
    picture(robot, "large-text-" + tab.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
    assertEquals(List.of(), cut);
  }

  /** Words of labels and buttons that are shown shorter than they are. */
  private static void collect(Node node, List<String> cut) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Labeled label && label.lookup(".text") instanceof Text shown) {
      if (!shown.getText().replace("\n", " ").equals(label.getText().replace("\n", " "))) {
        cut.add(label.getText() + " as " + shown.getText());
      }
    }
    if (node instanceof Parent parent && !(node instanceof ComboBoxBase<?>)) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, cut));
    }
  }

  @Test
  void whatTurnsThePagesOfALessonStaysInSight(FxRobot robot) throws Exception {
    robot.interact(() -> window.bench().openTab("Lessons"));
    wait(() -> robot.lookup("#lesson-coupling").tryQuery().isPresent());
    robot.clickOn("#lesson-coupling");
    robot.interact(() -> models.look().textScale().set(2.2));
    for (int page = 0; page < 5; page++) {
      WaitForAsyncUtils.waitForFxEvents();
      Node on = robot.lookup("#lesson-next").query();
      wait(() -> on.localToScene(on.getLayoutBounds()).getMaxY() < 800);
      robot.lookup("#answer-1").<Button>tryQuery().ifPresent(b -> robot.interact(b::fire));
      robot.interact(robot.lookup("#lesson-next").queryButton()::fire);
    }
    picture(robot, "large-text-lesson-page");
  }

  @Test
  void theEarHasHalfOfTheWindow(FxRobot robot) throws Exception {
    wait(() -> window.bench().ear3d().getLayoutBounds().getWidth() >= 0.45 * 1280);
    assertTrue(window.bench().ear3d().getLayoutBounds().getHeight() > 300);
  }

  /** The panes of the plan come back to the left when there is room again. */
  @Test
  void threeColumnsComeBackWithSmallerType(FxRobot robot) throws Exception {
    wait(() -> tabs(robot, "#tabs") == 9);
    robot.interact(() -> models.look().textScale().set(1));
    wait(() -> tabs(robot, "#inputs") == 3);
    assertEquals(6, tabs(robot, "#tabs"));
    assertEquals("Balance", window.bench().openTab());
  }

  private static int tabs(FxRobot robot, String id) {
    return robot.lookup(id).<TabPane>tryQuery().map(pane -> pane.getTabs().size()).orElse(0);
  }

  @Test
  void whatTellsTheStateDoesNotHideTheEar(FxRobot robot) throws Exception {
    wait(() -> state(robot).contains("At rest"));
    Node chip = robot.lookup("#state").query();
    wait(() -> chip.localToScene(chip.getLayoutBounds()).getMaxY() <= top() + 1);
  }

  private double top() {
    Node picture = window.bench().picture();
    return picture.localToScene(picture.getLayoutBounds()).getMinY();
  }
}
