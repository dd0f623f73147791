package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.viewer.scene.Spot;
import java.util.List;

/** The target's range for the rim at any height: straight lines between the levels. */
final class TargetAt {
  private TargetAt() {}

  static Range height(Target target, double heightPercent) {
    Level[] levels = Level.values();
    Range above = range(target, levels[0]);
    if (heightPercent >= levels[0].heightPercent()) {
      return above;
    }
    for (int i = 1; i < levels.length; i++) {
      Range below = range(target, levels[i]);
      double high = levels[i - 1].heightPercent();
      double low = levels[i].heightPercent();
      if (heightPercent >= low) {
        double share = (heightPercent - low) / (high - low);
        return Range.of(
            below.low() + share * (above.low() - below.low()),
            below.high() + share * (above.high() - below.high()));
      }
      above = below;
    }
    return above;
  }

  private static Range range(Target target, Level level) {
    return target.helixMastoid_mm().getOrDefault(level, Range.of(0, 60));
  }

  /**
   * The part of the rim that distances are taken of: from its highest point down at the back. In
   * front of it the rim runs to its root on the head, where no distance is aimed at.
   */
  static List<Spot> behind(List<Spot> rim) {
    int top = 0;
    for (int i = 1; i < rim.size(); i++) {
      if (rim.get(i).z_mm() > rim.get(top).z_mm()) {
        top = i;
      }
    }
    List<Spot> one = rim.subList(0, Math.min(rim.size(), top + 1));
    List<Spot> other = rim.subList(top, rim.size());
    return mean(one) < mean(other) ? one : other;
  }

  private static double mean(List<Spot> spots) {
    return spots.stream().mapToDouble(Spot::y_mm).average().orElse(Double.MAX_VALUE);
  }
}
