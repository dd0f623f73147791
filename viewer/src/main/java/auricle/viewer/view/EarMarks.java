package auricle.viewer.view;

import auricle.rehearsal.Position;
import auricle.rehearsal.ThreadState;
import auricle.viewer.scene.EarScene;
import auricle.viewer.scene.EarSurface;
import auricle.viewer.scene.Marker;
import auricle.viewer.scene.Spot;
import auricle.viewer.scene.Tube;
import auricle.viewer.task.EarMap;
import auricle.viewer.task.EarMap.OnTriangle;
import auricle.viewer.task.Moment;
import auricle.viewer.viewmodel.Handle;
import auricle.viewer.viewmodel.Marks;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Shape3D;

/**
 * Lines and balls on the ear: fold line, places of the steps, threads, bites that can be dragged.
 */
final class EarMarks {
  private static final Color FOLD = Color.web("#20485c");
  private static final Color STEP = Color.web("#5d6b2a");
  private static final Color CHOSEN = Color.web("#0a6fc2");
  private static final Color THREAD = Color.web("#223a8f");
  private static final Color SLACK = Color.web("#8f8f8f");
  private static final Color POINTED = Color.web("#e0a100");
  private static final float LIFT_MM = 0.25f;

  private final EarScene scene;
  private final List<Tube> tubes = new ArrayList<>();
  private final List<Marker> balls = new ArrayList<>();
  private final Map<Node, Handle> handles = new HashMap<>();
  private final Marker pointed = new Marker(POINTED, 2.2);
  private int tubeCount;
  private int ballCount;

  EarMarks(EarScene scene) {
    this.scene = scene;
    scene.marks().getChildren().add(pointed.node());
    pointed.node().setVisible(false);
    pointed.node().setMouseTransparent(true);
  }

  /** Begins to draw anew. */
  void begin() {
    tubeCount = 0;
    ballCount = 0;
    handles.clear();
  }

  /** Hides what was not drawn again. */
  void end() {
    for (int i = tubeCount; i < tubes.size(); i++) {
      tubes.get(i).node().setVisible(false);
    }
    for (int i = ballCount; i < balls.size(); i++) {
      balls.get(i).node().setVisible(false);
    }
  }

  /** The handle that a node stands for, or none. */
  java.util.Optional<Handle> handle(Node node) {
    return java.util.Optional.ofNullable(handles.get(node));
  }

  /** The ball of a handle by its dose, for tests and the keyboard. */
  java.util.Optional<Node> ball(String levelKey) {
    return handles.entrySet().stream()
        .filter(e -> e.getValue().levelKey().equals(levelKey))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  void foldLine(Moment moment) {
    for (String name : List.of("fold", "fold line")) {
      List<Spot> spots = moment.line(name);
      if (!spots.isEmpty()) {
        tube(FOLD, 0.28).through(lifted(spots, moment.surface()), scene.mirrored());
      }
    }
  }

  void line(Marks.Line line, EarSurface surface, boolean chosen) {
    List<Spot> spots = new ArrayList<>();
    for (OnTriangle p : line.places()) {
      spots.add(onFace(surface, p, line.posterior()));
    }
    tube(chosen ? CHOSEN : STEP, chosen ? 0.3 : 0.2).through(spots, scene.mirrored());
  }

  void thread(ThreadState thread, boolean chosen) {
    List<Spot> spots = new ArrayList<>();
    for (Position p : thread.points()) {
      spots.add(new Spot(p.lateral_mm(), p.anterior_mm(), p.superior_mm()));
    }
    if (thread.closed() && !spots.isEmpty()) {
      spots.add(spots.get(0));
    }
    Color colour = thread.slack() ? SLACK : chosen ? CHOSEN : THREAD;
    tube(colour, chosen ? 0.42 : 0.3).through(spots, scene.mirrored());
  }

  void handle(Handle handle, EarSurface surface, EarMap map) {
    Marker ball = ball(CHOSEN);
    ball.at(onFace(surface, handle.place(map), true), scene.mirrored());
    ball.node().setAccessibleText(handle.name() + ", " + handle.words());
    handles.put(ball.node(), handle);
  }

  /** Points out a place; null hides it. */
  void pointOut(java.util.Optional<Spot> spot) {
    spot.ifPresent(s -> pointed.at(s, scene.mirrored()));
    pointed.node().setVisible(spot.isPresent());
  }

  /** A point on one of the faces, a little above it so that it is seen. */
  static Spot onFace(EarSurface s, OnTriangle p, boolean posterior) {
    Spot middle = s.place(p.triangle(), p.w1(), p.w2());
    double[] w = {1 - p.w1() - p.w2(), p.w1(), p.w2()};
    double nx = 0;
    double ny = 0;
    double nz = 0;
    double half = LIFT_MM;
    for (int k = 0; k < 3; k++) {
      int v = s.triangles()[3 * p.triangle() + k];
      nx += w[k] * s.normals()[3 * v];
      ny += w[k] * s.normals()[3 * v + 1];
      nz += w[k] * s.normals()[3 * v + 2];
      half += w[k] * Math.max(1.6, s.thickness()[v]) / 2;
    }
    double by = posterior ? -half : half;
    return middle.plus(by * nx, by * ny, by * nz);
  }

  /** Lines on the middle surface, moved out to the visible face at the nearest vertex. */
  private static List<Spot> lifted(List<Spot> spots, EarSurface s) {
    List<Spot> out = new ArrayList<>();
    for (Spot spot : spots) {
      int nearest = 0;
      double best = Double.MAX_VALUE;
      for (int v = 0; v < s.vertexCount(); v++) {
        double dx = s.points()[3 * v] - spot.x_mm();
        double dy = s.points()[3 * v + 1] - spot.y_mm();
        double dz = s.points()[3 * v + 2] - spot.z_mm();
        double d = dx * dx + dy * dy + dz * dz;
        if (d < best) {
          best = d;
          nearest = v;
        }
      }
      double by = Math.max(1.6, s.thickness()[nearest]) / 2 + LIFT_MM;
      float[] n = s.normals();
      out.add(spot.plus(by * n[3 * nearest], by * n[3 * nearest + 1], by * n[3 * nearest + 2]));
    }
    return out;
  }

  private Tube tube(Color colour, double radius_mm) {
    if (tubeCount == tubes.size()) {
      Tube made = new Tube(colour, radius_mm);
      made.node().setMouseTransparent(true);
      tubes.add(made);
      scene.marks().getChildren().add(made.node());
    }
    Tube tube = tubes.get(tubeCount++);
    tube.colour(colour);
    tube.radius(radius_mm);
    return tube;
  }

  private Marker ball(Color colour) {
    if (ballCount == balls.size()) {
      Marker made = new Marker(colour, 1.25);
      balls.add(made);
      scene.marks().getChildren().add(made.node());
    }
    Marker ball = balls.get(ballCount++);
    Shape3D node = ball.node();
    node.setVisible(true);
    return ball;
  }
}
