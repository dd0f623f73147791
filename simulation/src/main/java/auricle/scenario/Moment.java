package auricle.scenario;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A moment of a rehearsal: before the plan, after it, when a step is done, or a time after the
 * operation.
 *
 * @param words as it is written: before, after, the name of a step, or 12 months
 * @param days after the operation; NaN if it is not such a time
 */
public record Moment(String words, double days) {
  /** The ear as it came. */
  public static final Moment BEFORE = new Moment("before", Double.NaN);

  /** The whole plan done, nothing healed yet. */
  public static final Moment AFTER = new Moment("after", Double.NaN);

  private static final Pattern TIME = Pattern.compile("(\\d+(?:\\.\\d+)?) (day|week|month|year)s?");

  /** A month is a twelfth of a year of 365 days, so that 12 months are a year. */
  private static final Map<String, Double> DAYS =
      Map.of("day", 1.0, "week", 7.0, "month", 365.0 / 12, "year", 365.0);

  /** What is written as a moment: a time if it reads as one, else a name. */
  public static Moment of(String words) {
    return time(words).orElseGet(() -> new Moment(words, Double.NaN));
  }

  /** A time after the operation, such as 6 weeks; empty if it does not read as one. */
  public static Optional<Moment> time(String words) {
    Matcher time = TIME.matcher(words.toLowerCase(Locale.ROOT));
    if (!time.matches()) {
      return Optional.empty();
    }
    double unit = DAYS.getOrDefault(time.group(2), Double.NaN);
    return Optional.of(new Moment(words, Double.parseDouble(time.group(1)) * unit));
  }

  /** The same in a sentence, the name of a step in quotes. */
  String said() {
    return isTime() || equals(BEFORE) || equals(AFTER) ? words : "'" + words + "'";
  }

  /** Whether it is a time after the operation. */
  public boolean isTime() {
    return !Double.isNaN(days);
  }
}
