package auricle.material;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Which tissue an ear has.
 *
 * <p>A choice or number for the whole ear holds in every region: where a region has a row of the
 * same variant, it takes that; where not, it follows the whole ear. A choice for a region goes
 * before one for the whole ear, a number before a choice, and a number for the thickness before a
 * measured one.
 *
 * @param rows variant by slot: {@code cartilage.modulus_mpa → indentation}; the full key with @ is
 *     understood too
 * @param overrides number by slot, in the unit of the slot
 * @param age_years of the person
 * @param cartilageThickness_mm thickness of the conchal cartilage, if it was measured
 */
public record TissueKeys(
    Map<String, String> rows,
    Map<String, Double> overrides,
    double age_years,
    OptionalDouble cartilageThickness_mm) {

  /** Keeps copies, in the order of the keys. */
  public TissueKeys {
    rows = Collections.unmodifiableMap(new TreeMap<>(rows));
    overrides = Collections.unmodifiableMap(new TreeMap<>(overrides));
  }

  /** Standard rows for an age, thickness not measured. */
  public static TissueKeys standard(double age_years) {
    return new TissueKeys(Map.of(), Map.of(), age_years, OptionalDouble.empty());
  }

  /** With a measured thickness of the conchal cartilage, mm. */
  public TissueKeys withThickness(double thickness_mm) {
    return new TissueKeys(rows, overrides, age_years, OptionalDouble.of(thickness_mm));
  }

  /** With a number in the place of a row. */
  public TissueKeys withOverride(String slot, double value) {
    Map<String, Double> changed = new TreeMap<>(overrides);
    changed.put(slot, value);
    return new TissueKeys(rows, changed, age_years, cartilageThickness_mm);
  }

  /** With another variant of a row. */
  public TissueKeys withRow(String slot, String variant) {
    Map<String, String> changed = new TreeMap<>(rows);
    changed.put(slot, variant);
    return new TissueKeys(changed, overrides, age_years, cartilageThickness_mm);
  }
}
