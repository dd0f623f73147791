package auricle.viewer.view;

import java.util.List;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.layout.Region;

/**
 * Plan, ear and what is measured beside each other. Where the window is too narrow for the size of
 * text, plan and what is measured share one column, so that the ear keeps its place; a lesson on
 * the whole screen has the ear and the lesson alone.
 */
final class Columns extends SplitPane {
  private static final double LEFT_EM = 22;
  private static final double RIGHT_EM = 30;

  /** Narrower than this, there is no room for three columns. */
  private static final double THREE_EM = 78;

  private final Tabs inputs;
  private final Tabs results;
  private List<Tab> shared = List.of();
  private boolean lesson;
  private double em = 1;

  Columns(Tabs inputs, Region middle, Tabs results) {
    this.inputs = inputs;
    this.results = results;
    inputs.getStyleClass().add("left-pane");
    results.getStyleClass().add("right-pane");
    middle.setMinWidth(260);
    getItems().addAll(inputs, middle, results);
    setResizableWithParent(inputs, false);
    setResizableWithParent(results, false);
    divide();
    widthProperty().addListener(o -> arrange());
  }

  /** Follows the size of text, pixels. */
  void text(double em_px) {
    em = em_px;
    arrange();
  }

  /** Whether a lesson fills the screen: it is read from afar, with no plan beside it. */
  void project(boolean now) {
    if (lesson != now) {
      lesson = now;
      arrange();
      divide();
    }
  }

  private void arrange() {
    double all = getWidth();
    if (all > 0) {
      share(all < THREE_EM * em && !lesson);
      width(inputs, Math.max(LEFT_EM * em, Math.min(0.18 * all, 27 * em)), 0.28 * all, 0.25 * all);
      double most = shared.isEmpty() ? 0.4 * all : 0.5 * all;
      width(results, Math.max(RIGHT_EM * em, Math.min(0.27 * all, 40 * em)), most, 0.34 * all);
    }
    beside(shared.isEmpty() && !lesson);
  }

  /** Puts the plan's panes among those at the right, or takes them out again. */
  private void share(boolean now) {
    if (now && shared.isEmpty()) {
      shared = List.copyOf(inputs.getTabs());
      results.takeIn(inputs);
    } else if (!now && !shared.isEmpty()) {
      results.giveBack(inputs, shared);
      shared = List.of();
    }
  }

  private void beside(boolean wanted) {
    if (wanted != getItems().contains(inputs)) {
      if (wanted) {
        getItems().add(0, inputs);
      } else {
        getItems().remove(inputs);
      }
      divide();
    }
  }

  private void divide() {
    if (getItems().contains(inputs)) {
      setDividerPositions(0.237, 0.7);
    } else {
      setDividerPositions(lesson ? 0.62 : 0.5);
    }
  }

  private static void width(Region pane, double text, double most, double usual) {
    pane.setMinWidth(Math.min(text, most));
    pane.setMaxWidth(Math.max(usual, Math.min(text, most)));
  }

  /** Gives the side panes a width in heights of text, as far as the window allows. */
  void sidePanes(double left_em, double right_em, double window_px) {
    if (getItems().contains(inputs)) {
      setDividerPositions(left_em * em / window_px, 1 - right_em * em / window_px);
    }
  }

  /** Width of the pane at the left in heights of text. */
  double left_em() {
    return inputs.getWidth() / em;
  }

  /** Width of the pane at the right in heights of text. */
  double right_em() {
    return results.getWidth() / em;
  }
}
