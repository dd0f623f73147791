package auricle.rehearsal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Outcomes in patients that the time after the operation is held to, from their table. */
final class OutcomeRows {
  /** A cell in quotation marks, or one without commas. */
  private static final Pattern CELL = Pattern.compile("\"([^\"]*)\"|([^,]+)");

  private final List<List<String>> rows = new ArrayList<>();

  private OutcomeRows(String text) {
    text.lines()
        .filter(line -> !line.startsWith("#") && !line.startsWith("row,") && !line.isBlank())
        .forEach(line -> rows.add(cells(line)));
  }

  static OutcomeRows load() {
    try (InputStream in = OutcomeRows.class.getResourceAsStream("outcome_rows.csv")) {
      if (in == null) {
        throw new IllegalStateException("the table of outcomes is missing");
      }
      return new OutcomeRows(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    Matcher matcher = CELL.matcher(line);
    while (matcher.find()) {
      cells.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    return cells;
  }

  /** The value that the parameter is set to meet. */
  double aim() {
    return rows.stream()
        .filter(row -> row.get(1).equals("fit"))
        .mapToDouble(row -> Double.parseDouble(row.get(3)))
        .findFirst()
        .orElseThrow();
  }

  /** The rows with what the model gives. */
  List<OutcomeRow> with(Map<String, Double> found) {
    return rows.stream()
        .map(
            row ->
                new OutcomeRow(
                    row.get(2),
                    row.get(1).equals("fit"),
                    Double.parseDouble(row.get(3)),
                    Double.parseDouble(row.get(4)),
                    found.getOrDefault(row.get(0), Double.NaN),
                    row.get(5),
                    row.get(6)))
        .toList();
  }
}
