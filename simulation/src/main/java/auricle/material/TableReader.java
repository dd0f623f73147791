package auricle.material;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads tables of material rows. */
final class TableReader {
  private final Quantities quantities;
  private final Findings findings;

  TableReader(Quantities quantities, Findings findings) {
    this.quantities = quantities;
    this.findings = findings;
  }

  /** Rows of one table by key; what is wrong goes to the findings. */
  Map<String, MaterialRow> read(String file, String text) {
    Map<String, MaterialRow> rows = new LinkedHashMap<>();
    List<String> header = List.of();
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    try (CSVParser parser = CsvText.rows(plain)) {
      for (CSVRecord record : parser) {
        long line = parser.getCurrentLineNumber();
        if (header.isEmpty()) {
          header = record.toList();
          checkHeader(file, line, header);
        } else {
          row(file, line, header, record).ifPresent(r -> add(rows, r));
        }
      }
    } catch (IOException | UncheckedIOException e) {
      findings.error(
          file,
          "it cannot be read as CSV: " + e.getMessage(),
          "a table",
          "Look for a quote that is not closed.");
    }
    if (header.isEmpty()) {
      findings.error(file, "no header row", String.join(",", RowReader.COLUMNS), "");
    }
    return rows;
  }

  private void checkHeader(String file, long line, List<String> header) {
    String where = file + ":" + line;
    for (String name : header) {
      if (!RowReader.COLUMNS.contains(name)) {
        findings.error(
            where,
            "a column '" + name + "'",
            "a known column",
            NearestName.hint(name, RowReader.COLUMNS));
      }
    }
    List<String> missing = new ArrayList<>(RowReader.NEEDED);
    missing.removeAll(header);
    if (!missing.isEmpty()) {
      findings.error(
          where,
          "no column " + String.join(", ", missing),
          String.join(", ", RowReader.NEEDED) + " in every table",
          "Add it to the header row; its rows are not used without it.");
    }
  }

  private Optional<MaterialRow> row(String file, long line, List<String> header, CSVRecord record) {
    TableCells cells = new TableCells(file, line, header, record, findings);
    if (record.size() > header.size()) {
      findings.error(
          cells.row(),
          record.size() + " cells",
          header.size() + ", one a column",
          "Put quotes around words with a comma in them.");
      return Optional.empty();
    }
    return new RowReader(quantities, cells, findings).read();
  }

  private void add(Map<String, MaterialRow> rows, MaterialRow row) {
    MaterialRow other = rows.putIfAbsent(row.key(), row);
    if (other != null) {
      twice(row, other);
    }
  }

  /** Tells that a key stands twice where it may stand once. */
  void twice(MaterialRow row, MaterialRow other) {
    findings.error(
        row.place(),
        "a second row '" + row.key() + "', after " + other.place(),
        "each key once",
        "Name a variant with @.");
  }
}
