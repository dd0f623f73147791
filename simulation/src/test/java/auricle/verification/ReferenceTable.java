package auricle.verification;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;

/**
 * Reference values with their provenance: a CSV resource whose lines that begin with # say where
 * the values come from, whose first other line names the columns, and whose other lines are rows. A
 * cell that is empty or {@code nan} has no value there.
 */
public final class ReferenceTable {
  private final String name;
  private final List<String> provenance;
  private final List<String> columns;
  private final List<String[]> rows;

  private ReferenceTable(String name, List<String> lines) {
    this.name = name;
    provenance =
        lines.stream().filter(l -> l.startsWith("#")).map(l -> l.substring(1).strip()).toList();
    List<String[]> cells =
        lines.stream()
            .filter(l -> !l.isBlank() && !l.startsWith("#"))
            .map(l -> l.strip().split("\\s*,\\s*", -1))
            .toList();
    require(!provenance.isEmpty(), "no line of provenance (a line that begins with #)");
    require(cells.size() > 1, "no row");
    columns = List.of(cells.get(0));
    rows = cells.subList(1, cells.size());
    require(new HashSet<>(columns).size() == columns.size(), "two columns of one name");
    rows.forEach(
        r ->
            require(r.length == columns.size(), "a row of another length: " + String.join(",", r)));
  }

  /**
   * Reads a table of this package's folder {@code tables}.
   *
   * @param fileName for instance {@code sze31_cantilever_end_shear.csv}
   * @throws IllegalArgumentException if there is none, or if it is not a table with provenance
   */
  public static ReferenceTable read(String fileName) {
    try (InputStream in = ReferenceTable.class.getResourceAsStream("tables/" + fileName)) {
      if (in == null) {
        throw new IllegalArgumentException("no reference table " + fileName);
      }
      return parse(fileName, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a table from its text.
   *
   * @param name how messages call it
   * @throws IllegalArgumentException if it is not a table with provenance
   */
  public static ReferenceTable parse(String name, String text) {
    return new ReferenceTable(name, text.lines().toList());
  }

  /** What the notes say of the source, the problem and the confidence, line by line. */
  public List<String> provenance() {
    return provenance;
  }

  /** Names of the columns, in order. */
  public List<String> columns() {
    return columns;
  }

  /** Number of rows. */
  public int rows() {
    return rows.size();
  }

  /**
   * The numbers of a column, one a row, in the unit that the provenance states; NaN where the table
   * has no value.
   *
   * @throws IllegalArgumentException if there is no such column or a cell is not a number
   */
  public double[] column(String column) {
    double[] values = new double[rows.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = number(text(i, column));
    }
    return values;
  }

  /**
   * The words of one cell.
   *
   * @param row from 0
   * @throws IllegalArgumentException if there is no such column
   */
  public String text(int row, String column) {
    int place = columns.indexOf(column);
    require(place >= 0, "no column '" + column + "'; it has " + columns);
    return rows.get(row)[place];
  }

  private double number(String cell) {
    if (cell.isEmpty() || cell.equalsIgnoreCase("nan")) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(cell);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(name + ": '" + cell + "' is not a number", e);
    }
  }

  private void require(boolean good, String otherwise) {
    if (!good) {
      throw new IllegalArgumentException(name + ": " + otherwise);
    }
  }
}
