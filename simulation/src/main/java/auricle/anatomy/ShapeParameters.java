package auricle.anatomy;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Values of all {@link ShapeKnob shape knobs}.
 *
 * @param values one a knob, in the knob's own unit
 */
public record ShapeParameters(Map<ShapeKnob, Double> values) {
  /**
   * Copies the values and fills in the normal ones.
   *
   * @throws IllegalArgumentException if a value is outside the widest bounds of its knob
   */
  public ShapeParameters {
    Map<ShapeKnob, Double> all = new EnumMap<>(ShapeKnob.class);
    for (ShapeKnob knob : ShapeKnob.values()) {
      double value = values.getOrDefault(knob, knob.normal());
      if (!(value >= knob.least() && value <= knob.most())) {
        throw new IllegalArgumentException(
            "%s is %s; it lies between %s and %s"
                .formatted(knob.key(), value, knob.least(), knob.most()));
      }
      all.put(knob, value);
    }
    values = Collections.unmodifiableMap(all);
  }

  /** The normal adult shape. */
  public static ShapeParameters normalAdult() {
    return new ShapeParameters(Map.of());
  }

  /** The value of a knob, in its own unit. */
  public double value(ShapeKnob knob) {
    return values.getOrDefault(knob, knob.normal());
  }

  /** The same with another value of one knob. */
  public ShapeParameters with(ShapeKnob knob, double value) {
    Map<ShapeKnob, Double> changed = new EnumMap<>(values);
    changed.put(knob, value);
    return new ShapeParameters(changed);
  }

  /** The same with a value held within the usual bounds of its knob. */
  public ShapeParameters withWithin(ShapeKnob knob, double value) {
    return with(knob, Math.min(knob.high(), Math.max(knob.low(), value)));
  }
}
