package auricle.material;

import java.util.List;

/**
 * One number of the tables with what it rests on.
 *
 * @param key slot, and after an @ the name of the variant if it is not the standard one
 * @param quantity what it is
 * @param value in the quantity's unit
 * @param spread from ear to ear
 * @param count number of specimens or people; empty where it is not known
 * @param method how it was measured; may be empty
 * @param source who says so, never empty
 * @param locator where in the source, never empty
 * @param confidence how sure it is
 * @param note why this one, and what to mind; may be empty
 * @param place file and line
 */
public record MaterialRow(
    String key,
    Quantity quantity,
    double value,
    Spread spread,
    String count,
    String method,
    String source,
    String locator,
    Confidence confidence,
    String note,
    String place) {

  /** The key without the variant. */
  public String slot() {
    return slot(key);
  }

  /** The key without the variant. */
  static String slot(String key) {
    int at = key.indexOf('@');
    return at < 0 ? key : key.substring(0, at);
  }

  /** The name of the variant; empty for the standard row. */
  public String variant() {
    return key.substring(Math.min(key.length(), slot().length() + 1));
  }

  /** Name in the first place in braces of the quantity's key, such as a region; empty if none. */
  public String name() {
    return quantity.namesIn(slot()).orElse(List.of()).stream().findFirst().orElse("");
  }

  /**
   * The number below which a share of all ears lies.
   *
   * @param share in (0, 1)
   */
  public double quantile(double share) {
    return spread.quantile(value, share, quantity.lowest(), quantity.highest());
  }
}
