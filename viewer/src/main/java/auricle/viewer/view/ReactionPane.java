package auricle.viewer.view;

import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Reaction;
import auricle.viewer.viewmodel.Desk;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Reactions;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;

/** What each dose does to every third. */
final class ReactionPane extends VBox {
  private static final List<Tone> TONES = List.of(Tone.UPPER, Tone.MIDDLE, Tone.LOWER, Tone.LOBULE);
  private static final List<String> LEVELS = List.of("Upper", "Middle", "Lower", "Lobule");

  private final Reactions reactions;
  private final PlanSteps steps;
  private final Look look;
  private final VBox list = new VBox(8);

  ReactionPane(Reactions reactions, Desk desk, PlanSteps steps, Look look) {
    this.reactions = reactions;
    this.steps = steps;
    this.look = look;
    setId("reactions");
    getStyleClass().add("side-pane");
    Button work = new Button("Work out the reactions of this plan");
    work.setId("work-reactions");
    work.getStyleClass().add("primary");
    work.setOnAction(e -> reactions.work(desk.document().get().ear()));
    var words = Texts.paragraph("", "hint");
    words.textProperty().bind(reactions.words());
    getChildren()
        .addAll(
            Texts.paragraph(
                "What happens to each third when one dose is turned a little: distance from the head in mm, at the end of the operation.",
                "hint"),
            work,
            words,
            list);
    reactions.list().addListener((javafx.collections.ListChangeListener<Reaction>) c -> draw());
  }

  private void draw() {
    list.getChildren().clear();
    double most = 0.05;
    for (Reaction r : reactions.list()) {
      for (int i = 0; i < TONES.size(); i++) {
        most = Math.max(most, Math.abs(r.changes().get(i)));
      }
    }
    double scale = most;
    for (Reaction r : reactions.list()) {
      SheetCanvas canvas = new SheetCanvas(look, 8.6);
      canvas.show((w, h, em) -> bars(r, scale, w, em), words(r));
      canvas.setOnMouseClicked(e -> steps.choose(r.operation()));
      list.getChildren().add(canvas);
    }
  }

  private static String words(Reaction r) {
    return r.operation() + ", " + r.label() + ", " + r.per();
  }

  private static Sheet bars(Reaction r, double most, double w, double em) {
    Sheet sheet = new Sheet(w, 8.6 * em);
    sheet.words(
        0,
        0.7 * em,
        r.operation() + ": " + r.label() + ", " + r.per(),
        Tone.INK,
        1,
        true,
        Hold.LEFT);
    double zero = 4.5 * em + (w - 8.5 * em) / 2;
    double per = (w - 8.5 * em) / 2 / most;
    sheet.line(zero, 1.4 * em, zero, 6.8 * em, Tone.GRID, 1.2);
    for (int i = 0; i < TONES.size(); i++) {
      double y = (2.1 + 1.35 * i) * em;
      double change = r.changes().get(i);
      sheet.words(0, y, LEVELS.get(i), TONES.get(i), 0.95, true, Hold.LEFT);
      double x = zero + per * change;
      sheet.box(
          Math.min(zero, x),
          y - 0.4 * em,
          Math.max(1, Math.abs(x - zero)),
          0.8 * em,
          TONES.get(i),
          0.9);
      sheet.words(w, y, number(change) + " mm", Tone.INK, 0.95, false, Hold.RIGHT);
    }
    String angles =
        "fold angle, upper "
            + number(r.changes().get(4))
            + "°; helical show "
            + number(r.changes().get(5))
            + " mm";
    sheet.words(
        0,
        7.5 * em,
        r.converged() ? angles : "not at rest: do not use",
        r.converged() ? Tone.FAINT : Tone.CAUTION,
        0.9,
        false,
        Hold.LEFT);
    return sheet;
  }

  private static String number(double v) {
    return String.format(Locale.ROOT, "%+.2f", v).replace('-', '−');
  }
}
