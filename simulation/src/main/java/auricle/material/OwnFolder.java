package auricle.material;

import auricle.diagnostics.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A user's folder of tables. */
final class OwnFolder {
  private final Path folder;
  private final TableReader reader;
  private final Findings findings;

  OwnFolder(Path folder, TableReader reader, Findings findings) {
    this.folder = folder;
    this.reader = reader;
    this.findings = findings;
  }

  /** Rows of all its files *.csv in the order of their names. */
  Collection<MaterialRow> rows() {
    Map<String, MaterialRow> rows = new LinkedHashMap<>();
    for (Path file : tables()) {
      try {
        reader.read(file.toString(), Files.readString(file)).values().forEach(r -> add(rows, r));
      } catch (IOException e) {
        unreadable(file, "a table in UTF-8");
      }
    }
    return rows.values();
  }

  private List<Path> tables() {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> tables = files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
      if (tables.isEmpty()) {
        findings.error(folder.toString(), "no file *.csv in it", "a table at least", "");
      }
      return tables;
    } catch (IOException e) {
      unreadable(folder, "a folder with tables");
      return List.of();
    }
  }

  private void unreadable(Path what, String expected) {
    findings.error(what.toString(), "it cannot be read", expected, "");
  }

  private void add(Map<String, MaterialRow> rows, MaterialRow row) {
    MaterialRow other = rows.putIfAbsent(row.key(), row);
    if (other != null) {
      reader.twice(row, other);
    }
  }
}
