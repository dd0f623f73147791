package auricle.plan;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which tissue the ear is made of: rows of the material tables by what they are for, numbers that
 * take the place of the rows' own, and a press at the bedside that the stiffness has to meet. What
 * is not named is the standard tissue for the age.
 *
 * @param rows row of a table by what it is for, such as {@code cartilage} or {@code relaxation}
 * @param overrides numbers in the place of the tables', by key with unit, such as {@code
 *     cartilage_young_mpa}
 * @param press a press at the bedside, if one was made
 */
public record TissueChoice(
    Map<String, String> rows, Map<String, Double> overrides, Optional<PressTest> press) {

  /**
   * @param rows kept in the order of their keys
   * @param overrides kept in the order of their keys
   */
  public TissueChoice {
    rows = Collections.unmodifiableMap(new TreeMap<>(rows));
    overrides = Collections.unmodifiableMap(new TreeMap<>(overrides));
  }

  /** The standard tissue for the age. */
  public static TissueChoice standard() {
    return new TissueChoice(Map.of(), Map.of(), Optional.empty());
  }

  /** With another row. */
  public TissueChoice withRow(String role, String row) {
    Map<String, String> changed = new TreeMap<>(rows);
    changed.put(role, row);
    return new TissueChoice(changed, overrides, press);
  }

  /** With a number in the place of the tables'. */
  public TissueChoice withOverride(String key, double value) {
    Map<String, Double> changed = new TreeMap<>(overrides);
    changed.put(key, value);
    return new TissueChoice(rows, changed, press);
  }

  /** With the result of a press at the bedside. */
  public TissueChoice withPress(PressTest test) {
    return new TissueChoice(rows, overrides, Optional.of(test));
  }
}
