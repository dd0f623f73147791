package auricle.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import auricle.anatomy.Region;
import auricle.testing.Check;
import auricle.verification.ReferenceTable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables that come with the program. */
class ShippedTablesTest {
  private final MaterialTables tables = MaterialTables.shipped();

  private static ReferenceTable reference(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(ShippedTablesTest.class.getResourceAsStream(name))) {
      return ReferenceTable.parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  private double number(ReferenceTable table, int row) {
    MaterialRow found = tables.row(table.text(row, "row")).orElseThrow();
    return switch (table.text(row, "what")) {
      case "sd" -> found.spread().deviation();
      case "low" -> found.spread().low();
      case "high" -> found.spread().high();
      default -> found.value();
    };
  }

  @Test
  void everyTableOfTheFolderIsRead() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../material-tables"))) {
      List<String> names =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".csv"))
              .map(f -> f.replace(".csv", ""))
              .sorted()
              .toList();
      assertEquals(names, tables.quantities().tables().stream().sorted().toList());
    }
    tables.quantities().tables().forEach(t -> assertFalse(tables.rows(t).isEmpty(), t));
  }

  @Test
  void everyRowStandsInTheTableOfItsQuantityAndSaysWhereItIsFrom() {
    for (MaterialRow row : tables.rows()) {
      assertTrue(row.place().startsWith(row.quantity().table() + ".csv:"), row.key());
      assertFalse(row.source().isBlank() || row.locator().isBlank(), row.key());
      assertFalse(row.quantity().usedBy().isBlank(), row.key());
    }
  }

  @Test
  void everyKeyEndsInItsUnit() {
    for (Quantity q : tables.quantities().all()) {
      String unit =
          q.unit().toLowerCase(Locale.ROOT).replaceAll("^d$", "days").replace("/", "_per_");
      boolean pure = q.unit().equals("-") || q.unit().contains("·");
      assertTrue(pure || q.key().endsWith("_" + unit), q.key() + " in " + q.unit());
    }
  }

  @Test
  void publishedRowsAreAsPublished() throws IOException {
    ReferenceTable published = reference("published_rows.csv");
    double[] numbers = published.column("number");
    for (int i = 0; i < published.rows(); i++) {
      Check.within(1e-12, number(published, i), numbers[i], published.text(i, "source"));
      Confidence confidence = tables.row(published.text(i, "row")).orElseThrow().confidence();
      assertTrue(
          confidence == Confidence.SEEN || confidence == Confidence.SECOND_HAND,
          published.text(i, "row"));
    }
  }

  @Test
  void derivedRowsAreWhatTheArithmeticGives() throws IOException {
    ReferenceTable derived = reference("derived_rows.csv");
    for (int i = 0; i < derived.rows(); i++) {
      double first = derived.column("first")[i];
      double second = derived.column("second")[i];
      double exact = derived.text(i, "op").equals("mean") ? (first + second) / 2 : first / second;
      double digits = Math.pow(10, derived.column("digits")[i]);
      Check.within(
          1e-12, number(derived, i), Math.round(exact * digits) / digits, "arithmetic on sources");
      assertEquals(
          Confidence.DERIVED, tables.row(derived.text(i, "row")).orElseThrow().confidence());
    }
  }

  @Test
  void theStandardNumberLiesWithinTheBandOfItsSpread() {
    for (MaterialRow row : tables.rows()) {
      if (row.spread().varies() && !row.key().equals("thread_size.4_0.knot_pull_n@tested")) {
        assertTrue(row.quantile(0.1) < row.value() && row.value() < row.quantile(0.9), row.key());
      }
    }
  }

  @Test
  void theRegionsAreThoseOfTheAnatomy() {
    assertEquals(Arrays.stream(Region.values()).map(Region::key).toList(), Quantities.REGIONS);
    Tissue tissue = Tissue.standard();
    for (Region region : Region.values()) {
      assertEquals(region.hasCartilage(), tissue.hasCartilage(region.key()), region.key());
    }
  }
}
