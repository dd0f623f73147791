package auricle.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.shape.MeshView;

/** The side of the head beside the ear that is shown, as it looks best from where the eye is. */
final class HeadSide {
  /** Sine of the angle around the ear from where on the eye looks from behind. */
  private static final double BEHIND = -0.35;

  private final List<MeshView> nodes = new ArrayList<>();
  private final Group group = new Group();
  private boolean wanted = true;
  private boolean mirrored;
  private boolean behind;

  /**
   * @param lamps whose light is on it
   */
  HeadSide(List<Lamp> lamps) {
    for (HeadPatch patch : HeadPatch.values()) {
      nodes.add(patch.node(false, lamps));
      nodes.add(patch.node(true, lamps));
    }
    group.getChildren().addAll(nodes);
    choose();
  }

  Group node() {
    return group;
  }

  /** Shows it, or not. */
  void show(boolean now) {
    wanted = now;
    choose();
  }

  /** The ear that is shown is a left one, or not; the eye is there. */
  void seenFrom(Orbit eye, boolean left) {
    boolean now = Math.sin(Math.toRadians(eye.around_deg())) < BEHIND;
    if (now != behind || left != mirrored) {
      behind = now;
      mirrored = left;
      choose();
    }
  }

  private void choose() {
    int patch = (behind ? HeadPatch.FALLING_AWAY : HeadPatch.TO_THE_ROOT).ordinal();
    int chosen = wanted ? 2 * patch + (mirrored ? 1 : 0) : -1;
    for (int i = 0; i < nodes.size(); i++) {
      nodes.get(i).setVisible(i == chosen);
    }
  }
}
