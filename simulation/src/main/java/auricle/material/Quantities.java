package auricle.material;

import auricle.diagnostics.NearestName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;

/** Everything that the model reads from the tables; a row for anything else is a slip. */
public final class Quantities {
  /** Regions that may have rows of their own, as anatomy names them. */
  public static final List<String> REGIONS =
      List.of(
          "floor",
          "crus_helicis",
          "cymba_wall",
          "cavum_wall",
          "antihelix",
          "superior_crus",
          "inferior_crus",
          "triangular_fossa",
          "scapha",
          "helix",
          "cauda_helicis",
          "fissure",
          "antitragus",
          "tragus",
          "lobule");

  private final List<Quantity> all;

  private Quantities(List<Quantity> all) {
    this.all = List.copyOf(all);
  }

  /** The catalogue that comes with the program. */
  public static Quantities load() {
    try (InputStream in = Quantities.class.getResourceAsStream("quantities.csv")) {
      if (in == null) {
        throw new IllegalStateException("the catalogue of quantities is missing");
      }
      List<Quantity> read = new ArrayList<>();
      for (CSVRecord r :
          CsvText.records(new String(in.readAllBytes(), StandardCharsets.UTF_8)).getRecords()) {
        read.add(quantity(r));
      }
      return new Quantities(read);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Quantity quantity(CSVRecord r) {
    return new Quantity(
        r.get("key"),
        r.get("unit"),
        Double.parseDouble(r.get("lowest")),
        Double.parseDouble(r.get("highest")),
        r.get("table"),
        r.get("meaning"),
        r.get("used_by"));
  }

  /** All of them, in the order of the tables. */
  public List<Quantity> all() {
    return all;
  }

  /** Names of the tables that come with the program. */
  public List<String> tables() {
    return all.stream().map(Quantity::table).distinct().toList();
  }

  /** The quantity of a slot, that is of a key without variant. */
  public Optional<Quantity> of(String slot) {
    return all.stream().filter(q -> fits(q, slot)).findFirst();
  }

  private static boolean fits(Quantity quantity, String slot) {
    List<String> names = quantity.namesIn(slot).orElse(List.of());
    List<String> kinds = quantity.kindsOfNames();
    if (names.isEmpty()) {
      return slot.equals(quantity.key());
    }
    return IntStream.range(0, names.size()).allMatch(i -> fits(kinds.get(i), names.get(i)));
  }

  private static boolean fits(String kind, String name) {
    return switch (kind) {
      case "region" -> REGIONS.contains(name);
      case "day" -> name.matches("\\d{1,5}");
      default -> true;
    };
  }

  /** The slots of all regions under a slot of the whole ear, as far as the model reads them. */
  List<String> regionSlots(String slot) {
    int dot = slot.indexOf('.');
    return REGIONS.stream()
        .map(region -> slot.substring(0, dot + 1) + region + "." + slot.substring(dot + 1))
        .filter(s -> of(s).isPresent())
        .toList();
  }

  /** What a mistyped slot may have been meant to be. */
  String hint(String slot) {
    List<String> known = all.stream().flatMap(q -> spelledOut(q).stream()).toList();
    return NearestName.of(slot, known)
        .map(name -> "Did you mean '" + name + "'?")
        .orElse("'auricle materials' lists the keys that there are.");
  }

  private static List<String> spelledOut(Quantity q) {
    return q.kindsOfNames().equals(List.of("region"))
        ? REGIONS.stream().map(r -> q.key().replace("{region}", r)).toList()
        : List.of(q.key());
  }
}
