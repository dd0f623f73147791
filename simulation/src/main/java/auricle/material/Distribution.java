package auricle.material;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a number of the tables spreads from ear to ear. */
public enum Distribution {
  /** Not at all, as far as is known. */
  NONE,
  /** Normal about the value with the standard deviation, cut off at low and high. */
  NORMAL,
  /** Log-normal of the value as mean with the standard deviation, cut off at low and high. */
  LOGNORMAL,
  /** Even between low and high. */
  UNIFORM,
  /** From low to high with the peak at the value. */
  TRIANGULAR;

  /** The word in tables; that of {@link #NONE} may also be left out. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether a standard deviation is needed. */
  boolean needsDeviation() {
    return this == NORMAL || this == LOGNORMAL;
  }

  /** Whether low and high are needed. */
  boolean needsRange() {
    return this == UNIFORM || this == TRIANGULAR;
  }

  /** The one of a word in a table. */
  static Optional<Distribution> of(String key) {
    return Arrays.stream(values())
        .filter(d -> d.key().equals(key) || d == NONE && key.isEmpty())
        .findFirst();
  }

  /** All words. */
  static List<String> keys() {
    return Arrays.stream(values()).map(Distribution::key).toList();
  }
}
