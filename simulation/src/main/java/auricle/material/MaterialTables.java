package auricle.material;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All rows of the material tables: those that come with the program, and a user's own, which take
 * the place of rows of the same key and may add others.
 */
public final class MaterialTables {
  private final Quantities quantities;
  private final Map<String, MaterialRow> rows;

  private MaterialTables(Quantities quantities, Map<String, MaterialRow> rows) {
    this.quantities = quantities;
    this.rows = rows;
  }

  /**
   * The tables that come with the program.
   *
   * @throws IllegalStateException if they cannot be used, which is a fault of the program
   */
  public static MaterialTables shipped() {
    try {
      return load(List.of());
    } catch (BadInputException e) {
      throw new IllegalStateException(e.getMessage(), e);
    }
  }

  /**
   * The tables that come with the program, then those of the folders, each before the ones before
   * it.
   *
   * @param folders their files *.csv are read, in the order of their names
   * @throws BadInputException with everything that is wrong in all of them
   */
  public static MaterialTables load(List<Path> folders) throws BadInputException {
    Findings findings = new Findings();
    Quantities quantities = Quantities.load();
    TableReader reader = new TableReader(quantities, findings);
    Map<String, MaterialRow> rows = new LinkedHashMap<>();
    quantities.tables().forEach(t -> rows.putAll(reader.read(t + ".csv", shippedText(t))));
    for (Path folder : folders) {
      rows.putAll(own(folder, reader, findings));
    }
    findings.stopIfErrors();
    return new MaterialTables(quantities, rows);
  }

  private static String shippedText(String table) {
    try (InputStream in = MaterialTables.class.getResourceAsStream("tables/" + table + ".csv")) {
      if (in == null) {
        throw new IllegalStateException("the table " + table + " is missing");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, MaterialRow> own(Path folder, TableReader reader, Findings findings) {
    Map<String, MaterialRow> rows = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> tables = files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
      if (tables.isEmpty()) {
        findings.error(folder.toString(), "no file *.csv in it", "tables", "");
      }
      for (Path file : tables) {
        Map<String, MaterialRow> read = reader.read(file.toString(), Files.readString(file));
        read.forEach((key, row) -> addOwn(rows, row, findings));
      }
    } catch (IOException e) {
      findings.error(
          folder.toString(), "it cannot be read: " + e, "a folder with tables in UTF-8", "");
    }
    return rows;
  }

  private static void addOwn(Map<String, MaterialRow> rows, MaterialRow row, Findings findings) {
    MaterialRow other = rows.putIfAbsent(row.key(), row);
    if (other != null) {
      findings.error(
          row.place(),
          "a second row '" + row.key() + "', after " + other.place(),
          "each key once in a folder",
          "Name a variant with @.");
    }
  }

  /** What the model reads. */
  public Quantities quantities() {
    return quantities;
  }

  /** All rows, table by table as they were read. */
  public List<MaterialRow> rows() {
    return List.copyOf(rows.values());
  }

  /** Rows of one table. */
  public List<MaterialRow> rows(String table) {
    return rows.values().stream().filter(r -> r.quantity().table().equals(table)).toList();
  }

  /** The row of a key. */
  public Optional<MaterialRow> row(String key) {
    return Optional.ofNullable(rows.get(key));
  }

  /** All rows of a slot: the standard one and its variants. */
  public List<MaterialRow> variants(String slot) {
    return rows.values().stream().filter(r -> r.slot().equals(slot)).toList();
  }
}
