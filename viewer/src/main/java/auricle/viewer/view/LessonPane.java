package auricle.viewer.view;

import auricle.viewer.lesson.Lesson;
import auricle.viewer.lesson.LessonReader;
import auricle.viewer.viewmodel.Lessons;
import auricle.viewer.viewmodel.Look;
import java.util.Map;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/**
 * A lesson: pages of text, questions to answer before the ear shows what happens. What turns the
 * pages stays in sight below a text of any length and size.
 */
final class LessonPane extends BorderPane {
  private static final Map<String, String> TITLES =
      Map.of(
          "coupling", "Coupling: pull one third, all of them move",
          "hidden_helix", "The hidden helix: the upper third pulled too far",
          "spring_back", "Spring-back: what is left after a year",
          "lobule", "The lobule, unmasked and brought in");
  private static final double READING_S_PER_WORD = 0.35;

  /** Width of the column in heights of the usual text, on the whole screen. */
  private static final double PROJECTED_EMS = 30;

  private final Lessons lessons;
  private final Look look;
  private final VBox body = new VBox();
  private Timeline clock = new Timeline();
  private boolean playing;

  LessonPane(Lessons lessons, Look look) {
    this.lessons = lessons;
    this.look = look;
    setId("lesson");
    body.getStyleClass().add("side-pane");
    body.setSpacing(10);
    setCenter(Scrolled.over(body));
    widthProperty().addListener(o -> size());
    look.fullScreen()
        .addListener(
            o -> {
              size();
              draw();
            });
    look.textScale().addListener(o -> size());
    lessons.at().addListener(o -> draw());
    draw();
  }

  /** On the whole screen the type is as large as the column lets it be read from afar. */
  private void size() {
    double em = Texts.em(look);
    double large = look.fullScreen().get() ? Math.max(em, getWidth() / PROJECTED_EMS) : em;
    setStyle("-fx-font-size: " + Math.round(10 * large) / 10.0 + "px;");
  }

  private void draw() {
    body.getChildren().clear();
    setBottom(null);
    if (lessons.at().get().isEmpty()) {
      stop();
      choose();
    } else {
      page(lessons.at().get().get());
    }
  }

  private void choose() {
    body.getChildren()
        .add(
            Texts.paragraph(
                "Lessons show what each step does to the other thirds. A lesson opens its own scenario; save yours first.",
                "lesson-text"));
    for (String name : LessonReader.shipped()) {
      String title = TITLES.getOrDefault(name, name);
      body.getChildren().add(wide(title, "lesson-" + name, () -> lessons.begin(name)));
    }
  }

  private void page(Lessons.At at) {
    Lesson.Page page = at.current();
    body.getChildren().add(Texts.paragraph(at.lesson().title(), "lesson-title"));
    body.getChildren()
        .add(Texts.label("Page " + (at.page() + 1) + " of " + at.lesson().pages().size(), "hint"));
    if (page.asks()) {
      body.getChildren().add(Texts.paragraph(page.question(), "lesson-question"));
    }
    if (at.waits()) {
      for (int i = 0; i < page.choices().size(); i++) {
        body.getChildren().add(choice(page, i));
      }
    } else {
      answered(at, page);
    }
    setBottom(buttons(at));
    if (playing) {
      schedule(at);
    }
  }

  /** In the place of the choices, so that the answer is in sight in a small window too. */
  private void answered(Lessons.At at, Lesson.Page page) {
    if (page.asks()) {
      String verdict = at.answeredRightly() ? "Yes: " : "No: ";
      body.getChildren()
          .add(Texts.paragraph(verdict + page.choices().get(page.right()) + ".", "lesson-verdict"));
    }
    body.getChildren().add(Texts.paragraph(page.text(), "lesson-text"));
  }

  private Button choice(Lesson.Page page, int i) {
    return wide(page.choices().get(i), "answer-" + (i + 1), () -> lessons.answer(i));
  }

  private static Button wide(String words, String id, Runnable action) {
    Button button = new Button(words);
    button.setId(id);
    button.getStyleClass().add("wide-button");
    button.setWrapText(true);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setMinHeight(USE_PREF_SIZE);
    button.setOnAction(e -> action.run());
    return button;
  }

  private FlowPane buttons(Lessons.At at) {
    Button back = new Button("Back");
    back.setDisable(at.page() == 0);
    back.setOnAction(e -> lessons.turn(-1));
    Button on = new Button("Next page");
    on.setId("lesson-next");
    on.getStyleClass().add("primary");
    on.setDisable(at.waits() || at.page() == at.lesson().pages().size() - 1);
    on.setOnAction(e -> lessons.turn(1));
    Button play = new Button(playing ? "Pause" : "Play");
    play.setOnAction(e -> toggle(at));
    Button large = new Button(look.fullScreen().get() ? "Leave full screen" : "Full screen");
    large.setOnAction(e -> look.fullScreen().set(!look.fullScreen().get()));
    Button end = new Button("End");
    end.setId("lesson-end");
    end.setOnAction(e -> lessons.end());
    FlowPane row = new FlowPane(6, 6, back, on, play, large, end);
    row.getStyleClass().add("lesson-foot");
    row.getChildren().forEach(b -> ((Button) b).setMinWidth(USE_PREF_SIZE));
    return row;
  }

  private void toggle(Lessons.At at) {
    playing = !playing;
    if (!playing) {
      stop();
    }
    body.getChildren().clear();
    page(at);
  }

  /** Turns the page when it has been read; waits at questions. */
  private void schedule(Lessons.At at) {
    clock.stop();
    boolean last = at.page() == at.lesson().pages().size() - 1;
    if (at.waits() || last) {
      return;
    }
    int words = at.current().text().split("\\s+").length;
    clock =
        new Timeline(
            new KeyFrame(Duration.seconds(2 + READING_S_PER_WORD * words), e -> lessons.turn(1)));
    clock.play();
  }

  private void stop() {
    clock.stop();
    playing = false;
  }
}
