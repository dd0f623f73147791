package auricle.material;

import auricle.diagnostics.BadInputException;
import auricle.diagnostics.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All rows of the material tables: those that come with the program, and a user's own, which take
 * the place of rows of the same key and may add others.
 */
public final class MaterialTables {
  private final Quantities quantities;
  private final Map<String, List<MaterialRow>> rows = new LinkedHashMap<>();

  private MaterialTables(Quantities quantities) {
    this.quantities = quantities;
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
    MaterialTables tables = new MaterialTables(Quantities.load());
    TableReader reader = new TableReader(tables.quantities, findings);
    for (String table : tables.quantities.tables()) {
      tables.put(reader.read(table + ".csv", shippedText(table)).values());
    }
    for (Path folder : folders) {
      tables.put(new OwnFolder(folder, reader, findings).rows());
    }
    findings.stopIfErrors();
    return tables;
  }

  private void put(Collection<MaterialRow> added) {
    added.forEach(r -> rows.computeIfAbsent(r.key(), key -> new ArrayList<>()).add(0, r));
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

  /** What the model reads. */
  public Quantities quantities() {
    return quantities;
  }

  /** All rows, table by table as they were read. */
  public List<MaterialRow> rows() {
    return rows.values().stream().map(r -> r.get(0)).toList();
  }

  /** Rows of one table. */
  public List<MaterialRow> rows(String table) {
    return rows().stream().filter(r -> r.quantity().table().equals(table)).toList();
  }

  /** The row of a key. */
  public Optional<MaterialRow> row(String key) {
    return Optional.ofNullable(rows.get(key)).map(r -> r.get(0));
  }

  /** Rows of the key whose place another has taken, the latest first. */
  public List<MaterialRow> shadowed(String key) {
    List<MaterialRow> all = rows.getOrDefault(key, List.of());
    return List.copyOf(all.subList(Math.min(1, all.size()), all.size()));
  }

  /** All rows of a slot: the standard one and its variants. */
  public List<MaterialRow> variants(String slot) {
    return rows().stream().filter(r -> r.slot().equals(slot)).toList();
  }

  /** The row of the whole ear that a region without a row of its own follows. */
  public Optional<MaterialRow> wholeEar(String slot) {
    Optional<String> whole =
        Quantities.REGIONS.stream()
            .filter(region -> slot.contains("." + region + "."))
            .map(region -> slot.replace("." + region + ".", "."))
            .findFirst();
    return quantities.of(slot).isPresent() ? whole.flatMap(this::row) : Optional.empty();
  }

  /** Standard rows of regions that go their own way from a slot of the whole ear. */
  public List<MaterialRow> regions(String slot) {
    return quantities.regionSlots(slot).stream().flatMap(s -> row(s).stream()).toList();
  }
}
