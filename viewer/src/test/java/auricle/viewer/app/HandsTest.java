package auricle.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.scene.Orbit;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The ear is turned, shifted and brought nearer by mouse, trackpad and keys. */
@SuppressWarnings("NullAway.Init") // the window opens when the toolkit has started
class HandsTest extends OpenWindow {
  private static final double SAME = 1e-9;

  private Orbit from;

  @Override
  void opened() {
    window.bench().closeWelcome();
    from = window.bench().orbit();
  }

  private Orbit now() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.bench().orbit();
  }

  private Node picture() {
    return window.bench().ear3d();
  }

  /** A place beside the ear, where there is nothing to drag. */
  private Point2D beside() {
    return picture().localToScreen(60, picture().getLayoutBounds().getHeight() - 60);
  }

  @Test
  void aDragTurnsAndNothingElse(FxRobot robot) {
    robot.drag(beside(), MouseButton.PRIMARY).moveBy(20, 0).moveBy(40, 0).drop();
    Orbit turned = now();
    assertTrue(Math.abs(turned.around_deg() - from.around_deg()) > 5, "by " + turned);
    assertEquals(from.up_deg(), turned.up_deg(), 1);
    assertEquals(from.distance_mm(), turned.distance_mm(), SAME);
    assertEquals(from.right_mm(), turned.right_mm(), SAME);
  }

  @Test
  void whatIsPulledDownIsSeenFromHigherUp(FxRobot robot) {
    robot.drag(beside(), MouseButton.PRIMARY).moveBy(0, 10).moveBy(0, 30).drop();
    assertTrue(now().up_deg() > from.up_deg() + 5);
  }

  @ParameterizedTest
  @EnumSource(
      value = MouseButton.class,
      names = {"SECONDARY", "MIDDLE"})
  void aDragWithAnotherButtonShifts(MouseButton button, FxRobot robot) {
    robot.drag(beside(), button).moveBy(20, 0).moveBy(40, 0).drop();
    shiftedAlone(now());
  }

  @Test
  void aDragWithShiftShifts(FxRobot robot) {
    robot.press(KeyCode.SHIFT);
    robot.drag(beside(), MouseButton.PRIMARY).moveBy(20, 0).moveBy(40, 0).drop();
    robot.release(KeyCode.SHIFT);
    shiftedAlone(now());
  }

  private void shiftedAlone(Orbit shifted) {
    assertTrue(Math.abs(shifted.right_mm() - from.right_mm()) > 2, "by " + shifted);
    assertEquals(from.around_deg(), shifted.around_deg(), SAME);
    assertEquals(from.distance_mm(), shifted.distance_mm(), SAME);
  }

  @Test
  void theWheelBringsNearerAndAwayAgain(FxRobot robot) {
    robot.moveTo(beside());
    robot.scroll(javafx.geometry.VerticalDirection.UP);
    double once = now().distance_mm();
    assertTrue(once != from.distance_mm());
    robot.scroll(javafx.geometry.VerticalDirection.DOWN);
    assertEquals(from.distance_mm(), now().distance_mm(), 1e-6);
  }

  @Test
  void twoFingersOnATrackpadShift(FxRobot robot) {
    robot.interact(() -> scroll(12, 7, 2));
    Orbit shifted = now();
    shiftedAlone(shifted);
    assertTrue(Math.abs(shifted.down_mm() - from.down_mm()) > 0.5);
  }

  private void scroll(double dx, double dy, int touches) {
    Node glass = target();
    Event.fireEvent(
        glass,
        new ScrollEvent(
            ScrollEvent.SCROLL,
            50,
            50,
            50,
            50,
            false,
            false,
            false,
            false,
            true,
            false,
            4 * dx,
            4 * dy,
            4 * dx,
            4 * dy,
            ScrollEvent.HorizontalTextScrollUnits.NONE,
            0,
            ScrollEvent.VerticalTextScrollUnits.NONE,
            0,
            touches,
            null));
  }

  private Node target() {
    return window.bench().picture();
  }

  @Test
  void apartOnATrackpadBringsNearer(FxRobot robot) {
    robot.interact(
        () ->
            Event.fireEvent(
                target(),
                new ZoomEvent(
                    ZoomEvent.ZOOM,
                    50,
                    50,
                    50,
                    50,
                    false,
                    false,
                    false,
                    false,
                    true,
                    false,
                    1.25,
                    1.25,
                    null)));
    assertEquals(from.distance_mm() / 1.25, now().distance_mm(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({
    "LEFT, -6, 0, 1",
    "RIGHT, 6, 0, 1",
    "UP, 0, 6, 1",
    "DOWN, 0, -6, 1",
    "PLUS, 0, 0, 0.9",
    "ADD, 0, 0, 0.9",
    "MINUS, 0, 0, 1.1111",
    "SUBTRACT, 0, 0, 1.1111"
  })
  void keysTurnAndBringNearer(
      KeyCode key, double around, double up, double farther, FxRobot robot) {
    robot.interact(() -> press(key, false));
    Orbit now = now();
    assertEquals(around, now.around_deg() - from.around_deg(), 1e-6);
    assertEquals(up, now.up_deg() - from.up_deg(), 1e-6);
    assertEquals(farther, now.distance_mm() / from.distance_mm(), 1e-4);
  }

  @ParameterizedTest
  @CsvSource({"LEFT, -3, 0", "RIGHT, 3, 0", "UP, 0, -3", "DOWN, 0, 3"})
  void keysShift(KeyCode key, double right, double down, FxRobot robot) {
    robot.interact(() -> press(key, true));
    Orbit now = now();
    assertEquals(right, now.right_mm() - from.right_mm(), 1e-6);
    assertEquals(down, now.down_mm() - from.down_mm(), 1e-6);
    assertEquals(from.around_deg(), now.around_deg(), SAME);
  }

  /** Keys that not every keyboard has are given to the picture as they would come from one. */
  private void press(KeyCode key, boolean shift) {
    Event.fireEvent(
        picture(),
        new javafx.scene.input.KeyEvent(
            javafx.scene.input.KeyEvent.KEY_PRESSED, "", "", key, shift, false, false, false));
  }

  @ParameterizedTest
  @EnumSource(ClinicalView.class)
  void aDigitFliesToItsView(ClinicalView view, FxRobot robot) throws TimeoutException {
    robot.interact(() -> picture().requestFocus());
    robot.push(KeyCode.valueOf("DIGIT" + view.digit()));
    Orbit wanted = Orbit.at(view);
    WaitForAsyncUtils.waitFor(
        30,
        TimeUnit.SECONDS,
        () ->
            Math.abs(now().around_deg() - wanted.around_deg()) < 0.01
                && Math.abs(now().up_deg() - wanted.up_deg()) < 0.01);
  }

  @Test
  void aRealArrowKeyTurnsTheEarThatHasTheFocus(FxRobot robot) {
    robot.interact(() -> picture().requestFocus());
    robot.push(KeyCode.RIGHT);
    double turned = now().around_deg() - from.around_deg();
    assertTrue(Math.abs(turned) > 1, "a key that is held repeats itself, but it turns: " + turned);
  }
}
