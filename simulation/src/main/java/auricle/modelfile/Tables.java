package auricle.modelfile;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import auricle.yamlfile.Entry;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Columns of numbers in CSV files beside the model file: lines that begin with # are notes, the
 * first other line names the columns.
 */
final class Tables {
  private final ModelFolder folder;
  private final Findings findings;

  Tables(ModelFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** The column that a node with file, column, factor and skip_zero asks for. */
  List<Double> column(Entry e) {
    boolean skipZero = !e.has("skip_zero") || e.flag("skip_zero");
    return column(e, "column", "factor").stream().filter(v -> !skipZero || v != 0).toList();
  }

  /** The column named under a key, times the factor under another. */
  List<Double> column(Entry e, String columnKey, String factorKey) {
    List<String> lines = lines(e.get("file"));
    if (lines.isEmpty()) {
      return List.of();
    }
    List<String> names = List.of(lines.get(0).split("\\s*,\\s*"));
    int place = names.indexOf(e.text(columnKey));
    if (place < 0) {
      findings.error(
          e.at() + "/" + columnKey,
          "no column '" + e.text(columnKey) + "' in " + e.text("file"),
          "one of its columns",
          NearestName.hint(e.text(columnKey), names));
      return List.of();
    }
    return numbers(e, lines.subList(1, lines.size()), place, e.number(factorKey, 1));
  }

  private List<Double> numbers(Entry e, List<String> rows, int place, double factor) {
    List<Double> numbers = new ArrayList<>();
    for (String row : rows) {
      String[] cells = row.split(",", -1);
      String cell = place < cells.length ? cells[place].strip() : "";
      try {
        numbers.add(factor * Double.parseDouble(cell));
      } catch (NumberFormatException notOne) {
        findings.error(
            e.get("file").at(),
            "'" + cell + "' in the row '" + row + "' of " + e.text("file"),
            "a number",
            "");
      }
    }
    return numbers;
  }

  private List<String> lines(Entry file) {
    String name = file.node().asString();
    try {
      List<String> lines =
          folder.text(name).lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
      if (lines.size() < 2) {
        findings.error(file.at(), name + " has no rows", "a table with a line of names", "");
      }
      return lines;
    } catch (IOException e) {
      findings.error(
          file.at(),
          "cannot read " + name,
          "a CSV file beside the model file",
          "Check the path; it is relative to the model file.");
      return List.of();
    }
  }
}
