package auricle.viewer.view;

import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import java.util.Optional;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The course from before through every step to a year after, under one slider. */
final class TimeBar extends VBox {
  private final Showing showing;
  private final Slider slider = new Slider(0, 1, 0);
  private final Label words = Texts.label("", "moment-label");
  private final Button play = new Button("Play");
  private final Timeline clock;
  private final SheetCanvas stops;
  private final Later later = new Later(this::follow);
  private boolean following;

  TimeBar(Showing showing, Look look) {
    this.showing = showing;
    this.stops = new SheetCanvas(look, 1.5);
    setId("time-bar");
    getStyleClass().add("time-bar");
    slider.setId("time");
    slider.setAccessibleText("Moment of the course");
    slider.setBlockIncrement(1);
    slider.setMajorTickUnit(1);
    slider.setMinorTickCount(0);
    slider.setSnapToTicks(true);
    clock = new Timeline(new KeyFrame(Duration.millis(900), e -> tick()));
    clock.setCycleCount(Timeline.INDEFINITE);
    play.setId("play");
    play.setMinWidth(USE_PREF_SIZE);
    words.setMinWidth(0);
    words.setWrapText(true);
    play.setTooltip(new Tooltip("Run through the course (P)"));
    play.setOnAction(e -> toggle());
    Button back = new Button("◂");
    back.setAccessibleText("One moment back");
    back.setTooltip(new Tooltip("One moment back (comma)"));
    back.setOnAction(e -> showing.step(-1));
    Button on = new Button("▸");
    on.setId("moment-on");
    on.setAccessibleText("One moment on");
    on.setTooltip(new Tooltip("One moment on (full stop)"));
    on.setOnAction(e -> showing.step(1));
    HBox row = new HBox(8, back, play, on, words);
    row.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(words, Priority.ALWAYS);
    getChildren().addAll(row, slider, stops);
    slider.valueProperty().addListener((o, was, now) -> slid(now.doubleValue()));
    showing.moment().addListener(o -> changed());
    changed();
  }

  /** Leaves out the names of the moments, where there is little height. */
  void low(boolean now) {
    stops.setVisible(!now);
    stops.setManaged(!now);
  }

  /** Starts or stops running through the course. */
  void toggle() {
    if (clock.getStatus() == javafx.animation.Animation.Status.RUNNING) {
      clock.stop();
      play.setText("Play");
    } else {
      int last = course().size() - 1;
      showing.show(showing.index() >= last ? 0 : showing.index());
      clock.play();
      play.setText("Pause");
    }
  }

  private void tick() {
    if (showing.index() >= course().size() - 1) {
      toggle();
    } else {
      showing.step(1);
    }
  }

  private List<Moment> course() {
    return showing.result().get().map(Rehearsed::course).orElse(List.of());
  }

  private void slid(double value) {
    int index = (int) Math.round(value);
    if (!following && index != showing.index()) {
      showing.show(index);
    }
  }

  /** Says at once which moment it is; the slider and its names follow the ear. */
  private void changed() {
    Optional<Moment> now = showing.moment().get();
    words.setText(now.map(m -> where(m, course())).orElse(""));
    later.ask();
  }

  private void follow() {
    following = true;
    List<Moment> course = course();
    slider.setMax(Math.max(1, course.size() - 1));
    slider.setValue(showing.index());
    following = false;
    stops.show((w, h, em) -> Stops.draw(course, showing.index(), w, h, em), words.getText());
  }

  private String where(Moment now, List<Moment> course) {
    if (now.healed()) {
      return now.label() + " after the operation";
    }
    int index = showing.index();
    int steps = (int) course.stream().filter(m -> !m.healed()).count();
    if (index == 0) {
      return "Before the operation";
    }
    Optional<Rehearsed> result = showing.result().get();
    boolean onTheWay = result.map(Rehearsed::onTheWay).orElse(false);
    int all = onTheWay ? result.map(r -> r.ear().plan().enabled().size()).orElse(steps) : steps - 1;
    return index == all
        ? "End of the operation"
        : "After step " + index + " of " + all + ": " + now.label();
  }
}
