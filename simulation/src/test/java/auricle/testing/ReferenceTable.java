package auricle.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table of reference values as shipped beside the verification cases: lines that begin with # say
 * what the values are and where they come from, the next line names the columns, the others hold
 * the cells. An empty cell is a value that nobody gave, NaN.
 */
public final class ReferenceTable {
  private static final String FOLDER = "/auricle/verification/tables/";

  private final String name;
  private final List<String> provenance;
  private final List<String> columns;
  private final List<List<String>> rows;

  private ReferenceTable(String name, List<String> lines) {
    this.name = name;
    provenance =
        lines.stream().filter(l -> l.startsWith("#")).map(l -> l.substring(1).strip()).toList();
    List<List<String>> cells =
        lines.stream()
            .filter(l -> !l.isBlank() && !l.startsWith("#"))
            .map(l -> Arrays.stream(l.split(",", -1)).map(String::strip).toList())
            .toList();
    if (cells.size() < 2) {
      throw new IllegalArgumentException(name + " has no rows");
    }
    columns = cells.get(0);
    rows = cells.subList(1, cells.size());
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            name + ": " + row + " has " + row.size() + " cells, expected " + columns.size());
      }
    }
  }

  /**
   * Reads a shipped table.
   *
   * @param name name of the file in the folder of tables, with its ending
   * @throws IllegalArgumentException if there is no such table or its rows are uneven
   */
  public static ReferenceTable named(String name) {
    try (InputStream stream = ReferenceTable.class.getResourceAsStream(FOLDER + name)) {
      if (stream == null) {
        throw new IllegalArgumentException("no table " + name + " in " + FOLDER);
      }
      return parse(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a table from its text; the name is used in messages only. */
  static ReferenceTable parse(String name, String text) {
    return new ReferenceTable(name, text.lines().toList());
  }

  /** The notes that head the table, a string a line, without their #. */
  public List<String> provenance() {
    return provenance;
  }

  /** Names of the columns, from left to right. */
  public List<String> columns() {
    return columns;
  }

  /** Number of rows, the line of names not counted. */
  public int size() {
    return rows.size();
  }

  /** The cell of a row (from 0) in the column of that name, as it is written. */
  public String text(int row, String column) {
    return rows.get(row).get(place(column));
  }

  /**
   * The number of a row (from 0) in the column of that name; NaN if the cell is empty.
   *
   * @throws IllegalArgumentException if there is no such column or the cell holds no number
   */
  public double value(int row, String column) {
    String cell = text(row, column);
    try {
      boolean absent = cell.isEmpty() || cell.equalsIgnoreCase("nan");
      return absent ? Double.NaN : Double.parseDouble(cell);
    } catch (NumberFormatException notOne) {
      throw new IllegalArgumentException(
          name + ", row " + row + ", " + column + ": '" + cell + "' is no number", notOne);
    }
  }

  /** The numbers of a column from top to bottom. */
  public double[] column(String column) {
    return IntStream.range(0, size()).mapToDouble(row -> value(row, column)).toArray();
  }

  private int place(String column) {
    int place = columns.indexOf(column);
    if (place < 0 || place != columns.lastIndexOf(column)) {
      throw new IllegalArgumentException(
          name + " has not one column '" + column + "' but " + columns);
    }
    return place;
  }
}
