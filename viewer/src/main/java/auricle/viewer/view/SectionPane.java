package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.viewer.scene.Sheet;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Balance;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.SectionSheet;
import auricle.viewer.viewmodel.Showing;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A section through the ear at any level, with distances that can be read. */
final class SectionPane extends SidePane {
  private final Showing showing;
  private final SheetCanvas canvas;
  private final Slider level = new Slider(2, 98, Level.MIDDLE.heightPercent());
  private final Label value = Texts.label("", "level-value");

  SectionPane(Showing showing, Look look) {
    super("section");
    this.showing = showing;
    this.canvas = new SheetCanvas(look, 24).growing();
    level.setId("section-level");
    level.setAccessibleText("Level of the section, % of ear height");
    level.setBlockIncrement(1);
    HBox.setHgrow(level, Priority.ALWAYS);
    HBox row = new HBox(8, Texts.label("Level"), level, value);
    row.setAlignment(Pos.CENTER_LEFT);
    FlowPane quick = new FlowPane(6, 4);
    for (Level l : Level.values()) {
      Button button = new Button(Balance.label(l));
      button.setOnAction(e -> level.setValue(l.heightPercent()));
      quick.getChildren().add(button);
    }
    FlowPane key =
        new FlowPane(
            14,
            2,
            Texts.label("before", "tone-before"),
            Texts.label("now", "balance-now"),
            Texts.label("12 months", "tone-year"),
            Texts.label("target", "tone-target"));
    getChildren()
        .addAll(
            quick,
            row,
            canvas,
            key,
            Texts.paragraph(
                "The number over an arrow is the distance of the most lateral point of this section from the mastoid plane, in mm. The wall is drawn 1.6 mm thick: skin and cartilage.",
                "hint"));
    level.valueProperty().addListener(o -> changed());
    showing.moment().addListener(o -> changed());
  }

  /** Level that is cut, % of ear height. */
  double level_percent() {
    return level.getValue();
  }

  @Override
  void draw() {
    value.setText(String.format(Locale.ROOT, "%.0f %%", level.getValue()));
    canvas.show(
        (w, h, em) -> sheet(w, h, em).orElse(new Sheet(w, h)),
        "Section at level " + value.getText());
  }

  /** The drawing at a size; nothing if there is no result. */
  Optional<Sheet> sheet(double w, double h, double em) {
    Optional<Rehearsed> r = showing.result().get();
    Optional<Moment> m = showing.moment().get();
    if (r.isEmpty() || m.isEmpty()) {
      return Optional.empty();
    }
    boolean left = r.get().ear().ear().side() == auricle.anatomy.Side.LEFT;
    return Optional.of(new SectionSheet(level.getValue(), left, em).draw(r.get(), m.get(), w, h));
  }
}
