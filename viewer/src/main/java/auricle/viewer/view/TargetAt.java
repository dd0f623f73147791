package auricle.viewer.view;

import auricle.anatomy.Level;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.viewer.scene.Spot;
import java.util.Comparator;
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
   * The part of the rim that distances are taken of: at the back, from its highest point down to
   * its lowest. Before these it runs to its roots on the head, where no distance is aimed at.
   */
  static List<Spot> behind(List<Spot> rim) {
    List<Spot> byHeight = rim.stream().sorted(Comparator.comparingDouble(Spot::z_mm)).toList();
    if (byHeight.isEmpty()) {
      return rim;
    }
    int low = rim.indexOf(byHeight.get(0));
    int top = rim.indexOf(byHeight.get(byHeight.size() - 1));
    return rim.subList(Math.min(low, top), Math.max(low, top) + 1);
  }
}
