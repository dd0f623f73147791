package auricle.report;

import auricle.material.Distribution;
import auricle.material.MaterialRow;
import auricle.material.Spread;
import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers and spreads of material rows in words. */
final class MaterialWords {
  private MaterialWords() {}

  /** A number as short as it is. */
  static String number(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros().toPlainString()
        : "-";
  }

  /** Number and unit. */
  static String amount(MaterialRow row) {
    String unit = row.quantity().unit();
    return number(row.value()) + (unit.equals("-") ? "" : " " + unit);
  }

  /** The spread in few words; a dash for none. */
  static String spread(MaterialRow row) {
    Spread s = row.spread();
    String range = number(s.low()) + " to " + number(s.high());
    return switch (s.distribution()) {
      case NONE -> "-";
      case UNIFORM -> range;
      case TRIANGULAR -> range + ", peaked";
      case NORMAL -> "sd " + number(s.deviation());
      case LOGNORMAL -> "sd " + number(s.deviation()) + ", skew";
    };
  }

  /** The spread in full, with the range in which eight of ten ears lie. */
  static String wholeSpread(MaterialRow row) {
    Spread s = row.spread();
    if (!s.varies()) {
      return "none stated";
    }
    String ends =
        Double.isNaN(s.low()) && Double.isNaN(s.high())
            ? ""
            : ", from " + number(s.low()) + " to " + number(s.high());
    String deviation = Double.isNaN(s.deviation()) ? "" : ", sd " + number(s.deviation());
    return "%s%s%s; 10-90 %%: %s to %s"
        .formatted(
            kind(s.distribution()),
            deviation,
            ends,
            shorter(row.quantile(0.1)),
            shorter(row.quantile(0.9)));
  }

  private static String kind(Distribution distribution) {
    return distribution == Distribution.UNIFORM ? "even" : distribution.key();
  }

  private static String shorter(double value) {
    return number(new BigDecimal(value).round(new MathContext(3)).doubleValue());
  }
}
