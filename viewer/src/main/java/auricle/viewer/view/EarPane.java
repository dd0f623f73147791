package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.report.UseNotice;
import auricle.viewer.scene.EarScene;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Palette;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.FieldScale;
import auricle.viewer.viewmodel.FieldScales;
import auricle.viewer.viewmodel.Look;
import auricle.viewer.viewmodel.Paint;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Showing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The ear in three dimensions, drawn from what is being shown. */
final class EarPane extends StackPane {
  /** Where the picture is lower than this, in heights of text, words over it hide the ear. */
  private static final double OVER_FROM_EM = 30;

  private final EarScene scene = new EarScene();
  private final EarMarks marks = new EarMarks(scene);
  private final TargetBand target = new TargetBand();
  private final MarksNow marksNow;
  private final Legend legend = new Legend();
  private final FieldScales scales = new FieldScales();
  private final Label use = Texts.paragraph(UseNotice.TEXT, "use-line");
  private final BorderPane body = new BorderPane();
  private final Showing showing;
  private final PlanSteps steps;
  private final Look look;
  private boolean centred;

  /** Whether what is drawn was foreseen, and what is shown by now has come to rest there. */
  private boolean awaited;

  EarPane(Showing showing, PlanSteps steps, Look look) {
    this.showing = showing;
    this.steps = steps;
    this.look = look;
    this.marksNow = new MarksNow(marks, showing, steps);
    getStyleClass().add("ear-pane");
    setMinSize(200, 200);
    body.setCenter(scene.picture());
    body.setBottom(new VBox(legend, use));
    onFile(false);
    getChildren().add(body);
    scene.veils().getChildren().add(target.node());
    look.theme().addListener((o, was, now) -> scene.picture().setFill(Tones.backdrop(now)));
    scene.picture().setFill(Tones.backdrop(look.theme().get()));
    showing.seen().addListener((o, was, now) -> follow(was, now));
    scene.whenStill(this::drawAwaited);
    showing.paint().addListener(o -> draw());
    steps.chosen().addListener(o -> draw());
    for (var layer :
        List.of(
            showing.ghost(),
            showing.head(),
            showing.target(),
            showing.threads(),
            showing.marks())) {
      layer.addListener(o -> draw());
    }
    draw();
  }

  /** Whether what it is for stands below the picture, which leaves the window in a file. */
  void onFile(boolean now) {
    use.setMaxWidth(Double.MAX_VALUE);
    use.setVisible(now);
    use.setManaged(now);
  }

  /** Lays what tells the state over the picture, or above it where it would hide the ear. */
  void state(StateChip chip) {
    setAlignment(chip, Pos.TOP_LEFT);
    setMargin(chip, new Insets(10));
    getChildren().add(chip);
    heightProperty().addListener(o -> Platform.runLater(() -> lay(chip)));
    look.textScale().addListener(o -> Platform.runLater(() -> lay(chip)));
  }

  /** Sets the legend in smaller type, where there is little height. */
  void low(boolean now) {
    legend.getStyleClass().remove("low");
    if (now) {
      legend.getStyleClass().add("low");
    }
  }

  private void lay(StateChip chip) {
    boolean over = getHeight() > OVER_FROM_EM * Texts.em(look);
    if (over && body.getTop() != null) {
      body.setTop(null);
      getChildren().add(chip);
    } else if (!over && getHeight() > 0 && body.getTop() == null) {
      getChildren().remove(chip);
      body.setTop(chip);
    }
  }

  /** The scene, for what moves the eye. */
  EarScene scene() {
    return scene;
  }

  /** The marks, for what drags them. */
  EarMarks marks() {
    return marks;
  }

  private void follow(Optional<Showing.Seen> was, Optional<Showing.Seen> now) {
    Paint paint = showing.paint().get();
    boolean shapeAlone = paint == Paint.SKIN || paint == Paint.REGIONS; // fields are not foreseen
    awaited = shapeAlone && was.isPresent() && now.isPresent() && now.get().isAsForeseen(was.get());
    if (awaited) {
      say(now.orElseThrow().moment());
    } else {
      draw();
    }
  }

  private void say(Moment m) {
    String rest = m.outcome().converged() ? "" : ", not at rest";
    setAccessibleText("The ear in three dimensions, " + m.label() + rest);
  }

  /** Draws what came to rest where it had been drawn already, when nothing moves any more. */
  private void drawAwaited() {
    if (awaited) {
      draw();
    }
  }

  /** Draws what is shown. */
  void draw() {
    awaited = false;
    Optional<Showing.Seen> seen = showing.seen().get();
    if (seen.isEmpty()) {
      scene.earNode().setVisible(false);
      return;
    }
    scene.earNode().setVisible(true);
    Rehearsed r = seen.get().result();
    Moment m = seen.get().moment();
    boolean left = r.ear().ear().side() == auricle.anatomy.Side.LEFT;
    scene.show(m.surface(), left);
    scene.showHead(showing.head().get());
    centre(r.before().surface());
    paint(r, m);
    boolean apart = !m.equals(r.before());
    scene.showGhost(
        showing.ghost().get() && apart ? Optional.of(r.before().surface()) : Optional.empty());
    target.draw(showing.target().get() ? Optional.of(m) : Optional.empty(), r, scene.mirrored());
    marksNow.draw(r, m);
    say(m);
  }

  private void centre(EarSurface surface) {
    if (!centred) {
      centred = true;
      List<Spot> spots = new ArrayList<>();
      for (int v = 0; v < surface.vertexCount(); v++) {
        float[] p = surface.points();
        spots.add(new Spot(p[3 * v], p[3 * v + 1], p[3 * v + 2]));
      }
      scene.centre(spots);
    }
  }

  private void paint(Rehearsed r, Moment m) {
    EarSurface surface = m.surface();
    Paint paint = showing.paint().get();
    if (paint == Paint.SKIN) {
      scene.paint(Palette.SKIN);
      scene.paintSkin(surface);
      legend.nothing();
    } else if (paint == Paint.REGIONS) {
      scene.paint(Palette.KINDS);
      float[] kinds = RegionColours.of(surface);
      scene.ear().colour(kinds, kinds);
      legend.regions(surface);
    } else {
      FieldScale scale = scales.of(r, paint);
      scene.paint(Palette.AMOUNT);
      float[] shares = scale.shares(surface, paint);
      scene.ear().colour(shares, shares);
      legend.scale(paint.words(m.healed()), paint.unit(), scale.high());
    }
  }

  /** Lights up a height of the ear on its rim. */
  void pointOut(Level level) {
    Optional<Moment> moment = showing.moment().get();
    marks.pointOut(moment.flatMap(m -> Heights.onRim(m, level)));
  }
}
