package auricle.report;

import java.util.ArrayList;
import java.util.List;

/** A table as CSV (RFC 4180): numbers in full precision, an empty cell where there is none. */
final class CsvText {
  private final StringBuilder text = new StringBuilder();
  private final int columns;

  /** A table of these columns. */
  CsvText(List<String> columns) {
    this.columns = columns.size();
    add(new ArrayList<>(columns));
  }

  /**
   * Adds a row of texts, numbers and truths, one a column.
   *
   * @throws IllegalArgumentException if there are more or fewer
   */
  void row(List<Object> cells) {
    if (cells.size() != columns) {
      throw new IllegalArgumentException(cells.size() + " cells for " + columns + " columns");
    }
    add(cells);
  }

  private void add(List<Object> cells) {
    for (int i = 0; i < cells.size(); i++) {
      text.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
    }
    text.append("\r\n");
  }

  private static String cell(Object value) {
    if (value instanceof Double number) {
      return Double.isFinite(number) ? number.toString() : "";
    }
    String words = value.toString();
    boolean plain = words.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? words : '"' + words.replace("\"", "\"\"") + '"';
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
