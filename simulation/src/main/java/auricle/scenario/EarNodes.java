package auricle.scenario;

import auricle.anatomy.EarMeasurements;
import auricle.anatomy.Level;
import auricle.plan.EarMeasure;
import auricle.plan.PressTest;
import auricle.plan.Range;
import auricle.plan.Target;
import auricle.plan.TissueChoice;
import java.util.Locale;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Ear, tissue and target as they stand in files. */
final class EarNodes {
  private EarNodes() {}

  static ObjectNode ear(EarMeasurements ear, boolean side) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    if (side) {
      node.put("side", ear.side().name().toLowerCase(Locale.ROOT));
    }
    for (EarMeasure measure : EarMeasure.values()) {
      number(node, measure.key(), measure.value(ear));
    }
    return node;
  }

  static ObjectNode tissue(TissueChoice tissue) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    tissue.rows().forEach(node::put);
    tissue.overrides().forEach((key, value) -> number(node, key, value));
    return node;
  }

  static ObjectNode press(PressTest press) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    number(node, "level_percent", press.level_percent());
    number(node, "depth_mm", press.depth_mm());
    number(node, "force_n", press.force_n());
    return node;
  }

  /** What differs from the usual target. */
  static ObjectNode target(Target target) {
    Target usual = Target.usual();
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    for (Level level : Level.values()) {
      Range range = target.helixMastoid_mm().getOrDefault(level, Range.of(0, 0));
      range(node, Target.key(level), range, usual.helixMastoid_mm().getOrDefault(level, range));
    }
    range(node, "fold_angle_upper_deg", target.foldAngleUpper_deg(), usual.foldAngleUpper_deg());
    range(node, "fold_angle_middle_deg", target.foldAngleMiddle_deg(), usual.foldAngleMiddle_deg());
    range(
        node,
        "auriculocephalic_angle_deg",
        target.auriculocephalicAngle_deg(),
        usual.auriculocephalicAngle_deg());
    range(node, "helical_show_mm", target.helicalShow_mm(), usual.helicalShow_mm());
    if (target.sideDifference_mm() != usual.sideDifference_mm()) {
      number(node, "side_difference_mm", target.sideDifference_mm());
    }
    return node;
  }

  private static void range(ObjectNode node, String key, Range range, Range usual) {
    if (!range.equals(usual)) {
      number(node.withArray("/" + key), range.low());
      number(node.withArray("/" + key), range.high());
    }
  }

  /** A number, whole ones without a point. */
  static void number(ObjectNode node, String key, double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e9) {
      node.put(key, (long) value);
    } else {
      node.put(key, value);
    }
  }

  /** A number of a list, whole ones without a point. */
  static void number(tools.jackson.databind.node.ArrayNode list, double value) {
    if (value == Math.rint(value) && Math.abs(value) < 1e9) {
      list.add((long) value);
    } else {
      list.add(value);
    }
  }
}
