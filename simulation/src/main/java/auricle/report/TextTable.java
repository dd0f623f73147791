package auricle.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A table in plain text: the first column to the left, the others as they ask, two spaces apart.
 */
final class TextTable {
  private final List<List<String>> rows = new ArrayList<>();
  private final String sides;

  /**
   * @param sides a letter a column: l to the left, r to the right
   */
  TextTable(String sides) {
    this.sides = sides;
  }

  /** Adds a row; missing cells are empty. */
  void row(String... cells) {
    List<String> row = new ArrayList<>(List.of(cells));
    while (row.size() < sides.length()) {
      row.add("");
    }
    rows.add(row);
  }

  /** Whether it has only its head. */
  boolean isBare() {
    return rows.size() <= 1;
  }

  /** The lines, indented by two spaces. */
  String text() {
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder("  ");
      for (int c = 0; c < sides.length(); c++) {
        String gap = " ".repeat(width(c) - row.get(c).length());
        boolean right = sides.charAt(c) == 'r';
        line.append(right ? gap : "").append(row.get(c)).append(right ? "" : gap).append("  ");
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  private int width(int column) {
    return rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
  }

  /** A number with so many decimals; a dash for none, and no minus before zero. */
  static String number(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "-";
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0\\.?0*") ? text.substring(1) : text;
  }

  /** The same with a plus before what is above zero. */
  static String change(double value, int decimals) {
    String text = number(value, decimals);
    return text.matches(".*[1-9].*") && value > 0 ? "+" + text : text;
  }

  /** A range as two numbers. */
  static String range(double low, double high) {
    return trimmed(low) + " to " + trimmed(high);
  }

  private static String trimmed(double value) {
    return number(value, 1).replaceAll("\\.0$", "");
  }
}
