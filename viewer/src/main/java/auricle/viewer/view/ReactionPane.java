package auricle.viewer.view;

import auricle.measurement.Figure;
import auricle.viewer.scene.Sheet;
import auricle.viewer.scene.Sheet.Hold;
import auricle.viewer.scene.Sheet.Tone;
import auricle.viewer.task.Reaction;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Reactions;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What each dose does to every third. */
final class ReactionPane extends SidePane {
  private static final List<Tone> TONES = List.of(Tone.UPPER, Tone.MIDDLE, Tone.LOWER, Tone.LOBULE);
  private static final List<String> LEVELS = List.of("Upper", "Middle", "Lower", "Lobule");

  private final Reactions reactions;
  private final PlanSteps steps;
  private final Look look;
  private final VBox list = new VBox(8);
  private final Label words = Texts.paragraph("", "hint");

  ReactionPane(Reactions reactions, PlanSteps steps, Look look) {
    super("reactions");
    this.reactions = reactions;
    this.steps = steps;
    this.look = look;
    Button work = new Button("Work out the reactions of this plan");
    work.setId("work-reactions");
    work.getStyleClass().add("primary");
    work.setOnAction(e -> reactions.work());
    getChildren()
        .addAll(
            Texts.paragraph(
                "What happens to each third when one dose is turned a little: distance from the head in mm, at the end of the operation.",
                "hint"),
            work,
            words,
            list);
    reactions.shown().addListener(o -> changed());
  }

  @Override
  void draw() {
    Reactions.Shown shown = reactions.shown().get();
    words.setText(shown.words());
    list.getChildren().clear();
    double most =
        shown.list().stream().mapToDouble(r -> r.most(Reactions.DISTANCES)).max().orElse(1);
    for (Reaction r : shown.list()) {
      SheetCanvas canvas = new SheetCanvas(look, 9.8);
      canvas.show((w, h, em) -> bars(r, most, w, em), words(r));
      canvas.setOnMouseClicked(e -> steps.choose(r.operation()));
      list.getChildren().add(canvas);
    }
    if (!shown.idle().isEmpty()) {
      String names = String.join("; ", shown.idle());
      list.getChildren().add(Texts.paragraph("Move nothing here: " + names + ".", "hint"));
    }
  }

  private static String words(Reaction r) {
    return r.operation() + ", " + r.label() + ", " + r.per();
  }

  private static Sheet bars(Reaction r, double most, double w, double em) {
    Sheet sheet = new Sheet(w, 9.8 * em);
    sheet.words(0, 0.7 * em, r.operation(), Tone.INK, 1, true, Hold.LEFT);
    sheet.words(w, 0.7 * em, r.per(), Tone.INK, 0.95, false, Hold.RIGHT);
    sheet.words(0, 1.9 * em, r.label(), Tone.INK, 0.95, false, Hold.LEFT);
    double zero = 4.2 * em + (w - 10 * em) / 2;
    double per = (w - 10 * em) / 2 / most;
    sheet.line(zero, 2.6 * em, zero, 8 * em, Tone.GRID, 1.2);
    for (int i = 0; i < TONES.size(); i++) {
      double y = (3.3 + 1.35 * i) * em;
      double change = r.of(Reactions.DISTANCES.get(i));
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
            + number(r.of(Figure.FOLD_ANGLE_UPPER))
            + "°; helical show "
            + number(r.of(Figure.HELICAL_SHOW_UPPER))
            + " mm";
    sheet.words(0, 8.7 * em, angles, Tone.FAINT, 0.9, false, Hold.LEFT);
    return sheet;
  }

  private static String number(double v) {
    return Double.isNaN(v) ? "–" : String.format(Locale.ROOT, "%+.2f", v).replace('-', '−');
  }
}
