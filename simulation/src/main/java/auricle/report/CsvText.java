package auricle.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/** A table as CSV (RFC 4180): numbers in full precision, an empty cell where there is none. */
final class CsvText {
  private final StringBuilder text = new StringBuilder();
  private final CSVPrinter printer;
  private final int columns;

  /** A table of these columns. */
  CsvText(List<String> columns) {
    this.columns = columns.size();
    try {
      this.printer = new CSVPrinter(text, CSVFormat.RFC4180);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    print(columns);
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
    print(cells);
  }

  private void print(List<?> cells) {
    try {
      for (Object value : cells) {
        printer.print(cell(value));
      }
      printer.println();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The printer leaves a cell empty for null; an empty text it may put in quotes. */
  private static @Nullable Object cell(Object value) {
    boolean none = value instanceof Double number && !Double.isFinite(number);
    return none || value.equals("") ? null : value;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
