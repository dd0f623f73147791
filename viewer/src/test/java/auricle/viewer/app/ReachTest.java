package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.Spinner;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Whatever can be worked is reached by the tabulator, in a ring, and has a name to be read out. */
class ReachTest extends OpenWindow {
  private static final int MOST_STOPS = 150;

  @Override
  void opened() {
    window.bench().closeWelcome();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Balance",
        "Section",
        "Both ears",
        "Course",
        "Reactions",
        "Lessons",
        "Ear",
        "Target"
      })
  void everyControlIsReachedInARingAndHasAName(String tab, FxRobot robot) throws Exception {
    robot.interact(() -> window.bench().openTab(tab));
    assertTrue(window.models().solving().settle(20_000));
    WaitForAsyncUtils.waitForFxEvents();
    Thread.sleep(500);
    Scene scene = window.bench().getScene();
    List<Node> stops = new ArrayList<>();
    robot.interact(() -> collect(scene.getRoot(), stops));
    assertTrue(stops.size() > 15, "found " + stops.size());
    assertEquals(List.of(), stops.stream().filter(n -> name(n).isBlank()).toList(), "no name");
    Set<Node> reached = ring(robot, scene);
    List<Node> missed = stops.stream().filter(n -> !reached.contains(n)).toList();
    assertEquals(List.of(), missed, "not reached");
  }

  /** Nodes that take the focus, are seen and can be worked. */
  private static void collect(Node node, List<Node> stops) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.isFocusTraversable() && !byArrows(node)) {
      stops.add(node);
    }
    if (node instanceof Parent parent && !(node instanceof Spinner<?>)) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, stops));
    }
  }

  /** Of buttons that exclude each other the tabulator stops at the chosen one, arrows go on. */
  private static boolean byArrows(Node node) {
    return node instanceof ToggleButton b && b.getToggleGroup() != null && !b.isSelected();
  }

  /** What a screen reader would say of it. */
  private static String name(Node node) {
    String said = node.getAccessibleText() == null ? "" : node.getAccessibleText();
    String text = node instanceof Labeled l && l.getText() != null ? l.getText() : "";
    String editor =
        node instanceof Spinner<?> s && s.getEditor().getAccessibleText() != null
            ? s.getEditor().getAccessibleText()
            : "";
    return said + text + editor + (node instanceof TabPane ? "tabs" : "");
  }

  @Test
  void dosesOfEveryStepAreReachedFromItsRow(FxRobot robot) throws Exception {
    assertTrue(window.models().solving().settle(20_000));
    for (int step = 0; step < 2; step++) {
      int chosen = step;
      robot.interact(() -> window.models().steps().chosen().set(chosen));
      Scene scene = window.bench().getScene();
      robot.interact(() -> window.bench().ear3d().requestFocus());
      Set<Node> reached = ring(robot, scene);
      assertEquals(chosen, window.models().steps().chosen().get(), "the tabulator chose another");
      String dose = chosen == 0 ? "#dose-depth_fraction" : "#dose-gap_mm";
      assertTrue(reached.contains(scene.lookup(dose)), dose);
    }
  }

  private static Set<Node> ring(FxRobot robot, Scene scene) {
    Set<Node> reached = new HashSet<>();
    Node first = scene.getFocusOwner();
    for (int i = 0; i < MOST_STOPS; i++) {
      robot.interact(() -> Event.fireEvent(scene.getFocusOwner(), tabulator()));
      Node owner = scene.getFocusOwner();
      for (Node n = owner; n != null; n = n.getParent()) {
        if (n instanceof Control || n == owner) {
          reached.add(n);
        }
        if (n instanceof Spinner<?> || n instanceof ComboBoxBase<?>) {
          break;
        }
      }
      if (owner == first && i > 0) {
        return reached;
      }
    }
    throw new AssertionError("the tabulator does not come back to " + first);
  }

  /**
   * Given as it comes from a keyboard: one that is held down by a slow robot would repeat itself.
   */
  private static KeyEvent tabulator() {
    return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, false, false, false);
  }
}
