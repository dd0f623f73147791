package auricle.viewer.view;

import auricle.plan.Range;
import auricle.viewer.scene.Ribbon;
import auricle.viewer.scene.Spot;
import auricle.viewer.task.Moment;
import auricle.viewer.task.Rehearsed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.paint.Color;

/** The band in which the rim should lie: the rim as it is, moved sideways to both ends. */
final class TargetBand {
  private final Ribbon ribbon = new Ribbon(Color.web("#1f9c85", 0.42));

  /** What is put into the scene. */
  Node node() {
    return ribbon.node();
  }

  /**
   * Draws it.
   *
   * @param shown the ear that it is drawn beside; empty hides it
   */
  void draw(Optional<Moment> shown, Rehearsed r, boolean mirrored) {
    List<Spot> low = new ArrayList<>();
    List<Spot> high = new ArrayList<>();
    shown.ifPresent(
        m -> {
          Heights heights = Heights.of(m.surface());
          for (Spot s : TargetAt.behind(m.line("rim"))) {
            Range range = TargetAt.height(r.ear().target(), heights.percent(s));
            low.add(new Spot(range.low(), s.y_mm(), s.z_mm()));
            high.add(new Spot(range.high(), s.y_mm(), s.z_mm()));
          }
        });
    ribbon.between(low, high, mirrored);
  }
}
