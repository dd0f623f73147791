package auricle.viewer.view;

import auricle.viewer.viewmodel.Showing;
import auricle.viewer.viewmodel.Solving;
import auricle.viewer.viewmodel.Work;
import java.util.List;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** Says what the picture is: of rest or not, of which moment, or older than the plan. */
final class StateChip extends VBox {
  /** Work shorter than this is not worth a bar and a button that come and go. */
  private static final Duration LONG = Duration.millis(400);

  private final Label state = Texts.label("", "state-words");
  private final Label moment = Texts.label("", "state-moment");
  private final ProgressBar progress = new ProgressBar();
  private final Button stop = new Button("Stop");
  private final VBox reasons = new VBox(3);
  private final PauseTransition whileBusy = new PauseTransition(LONG);
  private final Solving solving;
  private final Showing showing;
  private List<String> said = List.of();

  StateChip(Solving solving, Showing showing) {
    this.solving = solving;
    this.showing = showing;
    setId("state");
    getStyleClass().add("state-chip");
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    stop.setOnAction(e -> solving.cancel());
    stop.setMinWidth(Region.USE_PREF_SIZE);
    state.setWrapText(true);
    progress.setMinWidth(60);
    progress.getStyleClass().add("state-progress");
    HBox row = new HBox(8, state, progress, stop);
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(row, moment, reasons);
    whileBusy.setOnFinished(e -> bar(true));
    bar(false);
    solving.work().addListener(o -> draw());
    showing.moment().addListener(o -> draw());
    draw();
  }

  private void draw() {
    Work work = solving.work().get();
    boolean busy = work.state() == Work.State.SOLVING;
    follow(busy);
    progress.setProgress(work.share());
    boolean shownRests = showing.moment().get().map(m -> m.outcome().converged()).orElse(true);
    boolean open = (!busy && work.state() != Work.State.AT_REST) || !shownRests;
    mark(busy ? "busy" : open ? "open" : "rest");
    state.setText(words(work, shownRests));
    moment.setText(showing.moment().get().map(this::moment).orElse("no picture yet"));
    reasons(work.reasons().stream().limit(5).toList());
    setAccessibleText(state.getText() + ", " + moment.getText());
  }

  /** Leaves out the moment, where there is little height: the bar below the ear tells it too. */
  void low(boolean now) {
    moment.setVisible(!now);
    moment.setManaged(!now);
  }

  private void follow(boolean busy) {
    if (!busy) {
      whileBusy.stop();
      bar(false);
    } else if (!progress.isVisible() && whileBusy.getStatus() != Animation.Status.RUNNING) {
      whileBusy.playFromStart();
    }
  }

  /**
   * Shows bar and button, or not. The bar stands still where the share is not known: one that runs
   * to and fro would have the ear behind it drawn at every frame, by the processor that solves.
   */
  private void bar(boolean shown) {
    progress.setVisible(shown);
    progress.setManaged(shown);
    stop.setVisible(shown);
    stop.setManaged(shown);
  }

  private void mark(String style) {
    if (!getStyleClass().contains(style)) {
      getStyleClass().removeAll("busy", "rest", "open");
      getStyleClass().add(style);
    }
  }

  private void reasons(List<String> words) {
    if (!words.equals(said)) {
      said = words;
      reasons.getChildren().setAll(words.stream().map(w -> Texts.paragraph(w, "finding")).toList());
    }
  }

  private String words(Work work, boolean shownRests) {
    return switch (work.state()) {
      case AT_REST -> shownRests ? work.words() : "This moment is not at rest";
      case NOT_AT_REST -> shownRests ? "At rest here, but not at every step" : work.words();
      case REFUSED -> "This plan cannot be worked out; the picture is older";
      case SOLVING ->
          current() ? work.words() : "This step is of the plan before; working out the new one …";
      default -> work.words();
    };
  }

  private boolean current() {
    var result = showing.result().get();
    return showing.moment().get().map(m -> result.map(r -> r.current(m)).orElse(true)).orElse(true);
  }

  private String moment(auricle.viewer.task.Moment m) {
    return m.healed()
        ? m.label() + " after the operation"
        : showing.index() == 0 ? "before the operation" : "at operation, after " + m.label();
  }
}
