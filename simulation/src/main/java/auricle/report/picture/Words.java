package auricle.report.picture;

import auricle.report.drawing.Page;
import auricle.report.drawing.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Numbers and lines of text for pictures. */
final class Words {
  private Words() {}

  /** One decimal, with a true minus sign; a dash for what is no number. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.equals("-0.0") ? "0.0" : text.replace('-', '−');
  }

  /** The same with a sign before what is above zero. */
  static String change(double value) {
    String text = number(value);
    return Double.isFinite(value) && value > 0 && !text.equals("0.0") ? "+" + text : text;
  }

  /** A text as a heading. */
  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A range without needless decimals. */
  static String range(double low, double high) {
    return trimmed(low) + "–" + trimmed(high);
  }

  private static String trimmed(double value) {
    return number(value).replaceAll("\\.0$", "");
  }

  /** As much of a text as fits a width, with an ellipsis where it was cut. */
  static String fitted(String text, Style style, double width_mm) {
    String kept = text;
    while (kept.length() > 1 && Page.width_mm(kept, style) > width_mm) {
      String shorter = kept.endsWith("…") ? kept.substring(0, kept.length() - 1) : kept;
      kept = shorter.substring(0, shorter.length() - 1).stripTrailing() + "…";
    }
    return kept;
  }

  /** A text in lines that fit a width; the last of the lines allowed ends with an ellipsis. */
  static List<String> lines(String text, Style style, double width_mm, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (!rest.isEmpty() && lines.size() < most) {
      int end = lines.size() == most - 1 ? rest.length() : breakPoint(rest, style, width_mm);
      lines.add(fitted(rest.substring(0, end), style, width_mm));
      rest = rest.substring(end).strip();
    }
    return lines;
  }

  private static int breakPoint(String text, Style style, double width_mm) {
    if (Page.width_mm(text, style) <= width_mm) {
      return text.length();
    }
    int best = text.indexOf(' ');
    int next = best;
    while (next > 0 && Page.width_mm(text.substring(0, next), style) <= width_mm) {
      best = next;
      next = text.indexOf(' ', next + 1);
    }
    return best > 0 ? best : text.length();
  }
}
