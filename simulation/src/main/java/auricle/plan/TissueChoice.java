package auricle.plan;

import auricle.anatomy.EarMeasurements;
import auricle.material.TissueKeys;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Which tissue the ear is made of: rows of the material tables that are not the standard ones,
 * numbers that take the place of the rows' own, and a press at the bedside that the stiffness has
 * to meet. What is not named is the standard tissue for the age.
 *
 * @param rows name of a variant by the key of the row, such as {@code cartilage.modulus_mpa →
 *     indentation}
 * @param overrides numbers in the place of the tables', by the key of the row, in its unit
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

  /** What the material tables are asked for an ear of this tissue. */
  public TissueKeys keys(EarMeasurements ear) {
    return new TissueKeys(
        rows, overrides, ear.age_years(), OptionalDouble.of(ear.cartilageThickness_mm()));
  }

  /** With another variant of a row. */
  public TissueChoice withRow(String key, String variant) {
    Map<String, String> changed = new TreeMap<>(rows);
    changed.put(key, variant);
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
