package auricle.meshfile;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Numbers of text files; "nan" and "inf" are numbers here, and refused by the mesh's own check. */
final class Words {
  private Words() {}

  /** A decimal number, or empty. */
  static OptionalDouble number(String word) {
    try {
      return OptionalDouble.of(Double.parseDouble(word));
    } catch (NumberFormatException e) {
      return switch (word.toLowerCase(java.util.Locale.ROOT)) {
        case "nan", "-nan", "+nan", "nan(ind)", "-nan(ind)" -> OptionalDouble.of(Double.NaN);
        case "inf", "+inf", "infinity" -> OptionalDouble.of(Double.POSITIVE_INFINITY);
        case "-inf", "-infinity" -> OptionalDouble.of(Double.NEGATIVE_INFINITY);
        default -> OptionalDouble.empty();
      };
    }
  }

  /** A whole number, or empty. */
  static OptionalInt whole(String word) {
    try {
      return OptionalInt.of(Integer.parseInt(word));
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }

  /** A word or line short enough to be quoted in a finding, in quotes. */
  static String quoted(String text) {
    return "'" + printable(text, 40) + "'";
  }

  /** At most so many characters of a text, without control characters. */
  static String printable(String text, int most) {
    String clean = text.strip().replaceAll("\\p{Cntrl}|[\uFFFD\uD800-\uDFFF]", "?");
    return clean.length() > most ? clean.substring(0, most) + "…" : clean;
  }
}
