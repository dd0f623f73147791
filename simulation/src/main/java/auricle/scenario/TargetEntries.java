package auricle.scenario;

import auricle.anatomy.Level;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.yamlfile.Entry;
import java.util.EnumMap;
import java.util.Map;

/** The target: what a file gives, over the usual one. */
final class TargetEntries {
  private TargetEntries() {}

  static Target target(EarPart part) {
    Target usual = Target.usual();
    Map<Level, Range> distances = new EnumMap<>(Level.class);
    usual
        .helixMastoid_mm()
        .forEach((level, range) -> distances.put(level, range(part, Target.key(level), range)));
    return new Target(
        distances,
        range(part, "fold_angle_upper_deg", usual.foldAngleUpper_deg()),
        range(part, "fold_angle_middle_deg", usual.foldAngleMiddle_deg()),
        range(part, "auriculocephalic_angle_deg", usual.auriculocephalicAngle_deg()),
        range(part, "helical_show_mm", usual.helicalShow_mm()),
        part.find("target", "side_difference_mm")
            .map(e -> e.node().asDouble())
            .orElse(usual.sideDifference_mm()));
  }

  private static Range range(EarPart part, String key, Range usual) {
    return part.find("target", key).map(TargetEntries::range).orElse(usual);
  }

  private static Range range(Entry e) {
    return Range.of(e.node().path(0).asDouble(), e.node().path(1).asDouble());
  }
}
