package auricle.healing;

import java.util.Locale;

/** Lengths of time in words. */
public final class Durations {
  /** Seconds of a day. */
  public static final double DAY_S = 86400;

  private static final double MONTH_DAYS = 365.25 / 12;

  private Durations() {}

  /** "40 s", "20 min", "3 h", "5 days", "1 week", "3 months". */
  public static String words(double seconds) {
    double days = seconds / DAY_S;
    if (days < 1) {
      return withinADay(seconds);
    }
    double months = days / MONTH_DAYS;
    boolean whole = Math.abs(months - Math.rint(months)) < 0.02 * months;
    if (months > 0.9 && whole) {
      return number(months) + (Math.rint(months) == 1 ? " month" : " months");
    }
    if (days % 7 == 0 && days < 28) {
      return number(days / 7) + (days == 7 ? " week" : " weeks");
    }
    return number(days) + (Math.abs(days - 1) < 0.005 ? " day" : " days");
  }

  private static String withinADay(double seconds) {
    if (seconds < 60) {
      return number(seconds) + " s";
    }
    return seconds < 3600 ? number(seconds / 60) + " min" : number(seconds / 3600) + " h";
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
