package auricle.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The values of the doses of one operation, by key; immutable. */
public final class DoseValues {
  private final Map<String, Double> values;

  private DoseValues(Map<String, Double> values) {
    this.values = values;
  }

  /** The present values of some doses. */
  static DoseValues of(List<Dose> doses) {
    Map<String, Double> values = new LinkedHashMap<>();
    doses.forEach(d -> values.put(d.key(), d.value()));
    return new DoseValues(values);
  }

  /**
   * The same with one value changed.
   *
   * @throws IllegalArgumentException if the operation has no such dose
   */
  DoseValues with(String key, double value) {
    if (!values.containsKey(key)) {
      throw new IllegalArgumentException("no dose '" + key + "' among " + values.keySet());
    }
    Map<String, Double> changed = new LinkedHashMap<>(values);
    changed.put(key, value);
    return new DoseValues(changed);
  }

  double get(DoseRange range) {
    return get(range.key());
  }

  double get(String key) {
    Double value = values.get(key);
    if (value == null) {
      throw new IllegalArgumentException("no dose '" + key + "' among " + values.keySet());
    }
    return value;
  }
}
