package auricle.viewer.view;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * What this is for, and how a bite is moved; shown at the first start. What does not fit into the
 * window is scrolled, so that the button stays in sight.
 */
final class Welcome extends VBox {
  Welcome(String title, List<String> lines, Runnable close) {
    getStyleClass().add("welcome");
    setId("welcome");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    getChildren().add(Texts.paragraph(title, "welcome-title"));
    VBox text = new VBox();
    text.getStyleClass().add("welcome-text");
    lines.forEach(l -> text.getChildren().add(Texts.paragraph(l)));
    ScrollPane scroll = Scrolled.over(text);
    scroll.setFocusTraversable(true);
    scroll.setAccessibleText(title);
    scroll.prefViewportHeightProperty().bind(text.heightProperty());
    getChildren().add(scroll);
    Button button = new Button("Understood");
    button.setId("welcome-close");
    button.getStyleClass().add("primary");
    button.setDefaultButton(true);
    button.setOnAction(e -> close.run());
    getChildren().add(button);
  }

  static List<String> purpose() {
    return List.of(
        "For rehearsal, teaching and research. It is not a medical device and not validated for any patient; it defers to local rules and to licensed clinical judgement. A number here says what a model does, not what an ear will do.",
        "Put no names, dates of birth or other patient identity into scenarios. What is shown first is an invented ear.",
        "To begin: pull one of the blue balls, the bites of the chosen suture, over the back of the ear, or turn the gap of the tie at the left. The ear follows, and the balance at the right tells what every third did.");
  }

  static List<String> keys() {
    return List.of(
        "1 to 6: side, front, back, above, below, three-quarter. 0: the whole ear again.",
        "Arrow keys turn the ear, with Shift they shift it; + and − come nearer and go away. The mouse turns with the left button, shifts with the right one or Shift, the wheel comes nearer.",
        "Comma and full stop: one moment back and on. P: run through the course.",
        "In the list of steps: Space does a step or leaves it out, Alt with arrows moves it, Delete removes it.",
        "Ctrl+Z, Ctrl+Y: undo, redo. Ctrl+O, Ctrl+S: open, save. Ctrl+E: export the picture. Ctrl with + and −: size of text. F11: full screen.");
  }
}
