package auricle.material;

import auricle.diagnostics.Findings;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** The cells of one row by the names of their columns, with their places. */
final class TableCells {
  private final String file;
  private final long line;
  private final List<String> header;
  private final CSVRecord record;
  private final Findings findings;

  TableCells(String file, long line, List<String> header, CSVRecord record, Findings findings) {
    this.file = file;
    this.line = line;
    this.header = header;
    this.record = record;
    this.findings = findings;
  }

  /** File and line. */
  String row() {
    return file + ":" + line;
  }

  /** File, line and column. */
  String place(String column) {
    int index = header.indexOf(column);
    return row() + ", column " + (index < 0 ? "" : (index + 1) + " ") + "'" + column + "'";
  }

  /** Whether every column is there without which no row can be used. */
  boolean complete() {
    return header.containsAll(RowReader.NEEDED);
  }

  /** Whether the table has no such column although every table needs one. */
  boolean lacks(String column) {
    return RowReader.NEEDED.contains(column) && !header.contains(column);
  }

  /** The words of a cell; empty where there is none. */
  String text(String column) {
    int index = header.indexOf(column);
    return index >= 0 && index < record.size() ? record.get(index) : "";
  }

  /** The number of a cell; NaN where there is none, which is a finding if it is needed. */
  double number(String column, boolean needed) {
    String text = text(column);
    if (text.isEmpty() && (!needed || lacks(column))) {
      return Double.NaN;
    }
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // told below
    }
    findings.error(
        place(column),
        text.isEmpty() ? "nothing" : "'" + text + "'",
        "a number, with a point before decimals",
        text.indexOf(',') >= 0 ? "Write a point in the place of the comma." : "");
    return Double.NaN;
  }
}
