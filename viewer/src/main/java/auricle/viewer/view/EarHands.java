package auricle.viewer.view;

import auricle.viewer.scene.ClinicalView;
import auricle.viewer.scene.EarScene;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Orbit;
import auricle.viewer.task.Rehearsed;
import auricle.viewer.viewmodel.Drag;
import auricle.viewer.viewmodel.Handle;
import auricle.viewer.viewmodel.PlanSteps;
import auricle.viewer.viewmodel.Showing;
import java.util.List;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.geometry.Point3D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.PickResult;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;

/** What hands do to the picture: turn, shift, come nearer, drag a bite. */
final class EarHands {
  private static final double TURN_DEG_PER_PX = 0.35;
  private static final double KEY_TURN_DEG = 6;
  private static final double KEY_SHIFT_MM = 3;
  private static final double NEARER = 0.9;
  private static final double FLIGHT_S = 0.28;

  private final EarPane pane;
  private final Showing showing;
  private final PlanSteps steps;
  private final DragNote note;
  private Optional<Handle> dragged = Optional.empty();
  private double lastX;
  private double lastY;

  EarHands(EarPane pane, Showing showing, PlanSteps steps, DragNote note) {
    this.pane = pane;
    this.showing = showing;
    this.steps = steps;
    this.note = note;
    pane.setFocusTraversable(true);
    Node picture = pane.scene().picture();
    picture.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    picture.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    picture.addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
    picture.addEventHandler(MouseEvent.MOUSE_MOVED, this::hover);
    picture.addEventHandler(ScrollEvent.SCROLL, this::scroll);
    picture.addEventHandler(
        ZoomEvent.ZOOM, e -> look(scene().orbit().farther(1 / e.getZoomFactor())));
    pane.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  private EarScene scene() {
    return pane.scene();
  }

  private void look(Orbit orbit) {
    scene().sweep(orbit);
  }

  /** Flies to a clinical view. */
  void fly(ClinicalView view) {
    Orbit from = scene().orbit();
    Orbit to = Orbit.at(view);
    new AnimationTimer() {
      private long start = -1;

      @Override
      public void handle(long now) {
        start = start < 0 ? now : start;
        double share = Math.min(1, (now - start) / 1e9 / FLIGHT_S);
        look(from.towards(to, share * share * (3 - 2 * share)));
        if (share >= 1) {
          stop();
        }
      }
    }.start();
  }

  private void press(MouseEvent e) {
    pane.requestFocus();
    lastX = e.getSceneX();
    lastY = e.getSceneY();
    Node hit = e.getPickResult().getIntersectedNode();
    dragged = hit == null ? Optional.empty() : pane.marks().handle(hit);
    dragged.ifPresent(h -> note.show(h.name(), h.words(), e));
  }

  private void hover(MouseEvent e) {
    Node hit = e.getPickResult().getIntersectedNode();
    Optional<Handle> over = hit == null ? Optional.empty() : pane.marks().handle(hit);
    pane.setCursor(over.isPresent() ? javafx.scene.Cursor.HAND : javafx.scene.Cursor.DEFAULT);
    if (over.isPresent()) {
      note.show(over.get().name(), over.get().words() + " — drag it over the ear", e);
    } else {
      note.hide();
    }
  }

  private void drag(MouseEvent e) {
    double dx = e.getSceneX() - lastX;
    double dy = e.getSceneY() - lastY;
    lastX = e.getSceneX();
    lastY = e.getSceneY();
    if (dragged.isPresent()) {
      dragHandle(e);
    } else if (e.isSecondaryButtonDown() || e.isMiddleButtonDown() || e.isShiftDown()) {
      double mm = scene().perPixel_mm();
      look(scene().orbit().shifted(dx * mm, dy * mm));
    } else {
      double way = scene().mirrored() ? 1 : -1;
      look(scene().orbit().turned(way * dx * TURN_DEG_PER_PX * -1, dy * TURN_DEG_PER_PX));
    }
  }

  private void dragHandle(MouseEvent e) {
    PickResult pick = e.getPickResult();
    Optional<Rehearsed> result = showing.result().get();
    if (pick.getIntersectedNode() != scene().earNode() || result.isEmpty()) {
      return;
    }
    int triangle = scene().ear().triangle(pick.getIntersectedFace());
    Optional<EarSurface> shown = scene().ear().shown();
    if (triangle < 0 || shown.isEmpty()) {
      return;
    }
    double[] w = weights(shown.get(), triangle, pick.getIntersectedPoint());
    Handle to =
        new Drag(result.get().map(), result.get().before().surface(), dragged.orElseThrow())
            .to(triangle, w[0], w[1]);
    dragged = Optional.of(to);
    note.show(to.name(), to.words(), e);
    steps.turn(
        List.of(to.levelKey(), to.acrossKey()), List.of(to.level(), to.across()), to.levelKey());
  }

  /** Weights of the second and third corner for the point of a triangle nearest to a pick. */
  private double[] weights(EarSurface s, int triangle, Point3D picked) {
    auricle.viewer.scene.Spot p = scene().toEar(picked.getX(), picked.getY(), picked.getZ());
    double[] best = {1 / 3.0, 1 / 3.0};
    double least = Double.MAX_VALUE;
    int parts = 12;
    for (int i = 0; i <= parts; i++) {
      for (int j = 0; i + j <= parts; j++) {
        double d = s.place(triangle, (double) i / parts, (double) j / parts).distance(p);
        if (d < least) {
          least = d;
          best = new double[] {(double) i / parts, (double) j / parts};
        }
      }
    }
    return best;
  }

  private void release(MouseEvent e) {
    if (dragged.isPresent()) {
      steps.endTurn();
      dragged = Optional.empty();
      note.hide();
    }
  }

  private void scroll(ScrollEvent e) {
    if (e.getTouchCount() > 1 || e.isShiftDown()) {
      double mm = scene().perPixel_mm();
      look(scene().orbit().shifted(e.getDeltaX() * mm, e.getDeltaY() * mm));
    } else if (e.getDeltaY() != 0) {
      look(scene().orbit().farther(e.getDeltaY() > 0 ? NEARER : 1 / NEARER));
    }
    e.consume();
  }

  private void key(KeyEvent e) {
    if (e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    Orbit o = scene().orbit();
    KeyCode code = e.getCode();
    boolean shift = e.isShiftDown();
    double turn = scene().mirrored() ? -KEY_TURN_DEG : KEY_TURN_DEG;
    Optional<Orbit> next =
        Optional.ofNullable(
            switch (code) {
              case LEFT -> shift ? o.shifted(-KEY_SHIFT_MM, 0) : o.turned(-turn, 0);
              case RIGHT -> shift ? o.shifted(KEY_SHIFT_MM, 0) : o.turned(turn, 0);
              case UP -> shift ? o.shifted(0, -KEY_SHIFT_MM) : o.turned(0, KEY_TURN_DEG);
              case DOWN -> shift ? o.shifted(0, KEY_SHIFT_MM) : o.turned(0, -KEY_TURN_DEG);
              case PLUS, ADD, EQUALS -> o.farther(NEARER);
              case MINUS, SUBTRACT -> o.farther(1 / NEARER);
              case DIGIT0, NUMPAD0 -> Orbit.at(ClinicalView.THREE_QUARTER);
              default -> null;
            });
    if (next.isPresent()) {
      look(next.get());
      e.consume();
    }
  }
}
