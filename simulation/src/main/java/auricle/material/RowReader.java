package auricle.material;

import auricle.diagnostics.Findings;
import auricle.diagnostics.NearestName;
import java.util.List;
import java.util.Optional;

/** Reads one row of a table; what is wrong with it goes to the findings, all of it. */
final class RowReader {
  /** Columns that every table has. */
  static final List<String> COLUMNS =
      List.of(
          "key",
          "value",
          "unit",
          "distribution",
          "sd",
          "low",
          "high",
          "n",
          "method",
          "source",
          "locator",
          "confidence",
          "note");

  /** Those without which no row can be used. */
  static final List<String> NEEDED =
      List.of("key", "value", "unit", "source", "locator", "confidence");

  private final Quantities quantities;
  private final TableCells cells;
  private final Findings findings;

  RowReader(Quantities quantities, TableCells cells, Findings findings) {
    this.quantities = quantities;
    this.cells = cells;
    this.findings = findings;
  }

  /** The row, or nothing if it cannot be used. */
  Optional<MaterialRow> read() {
    int before = findings.list().size();
    String key = cells.text("key");
    Optional<Quantity> quantity = quantity(key);
    double value = cells.number("value", true);
    quantity.ifPresent(q -> checkValue(q, value));
    Spread spread = spread(value);
    String source =
        needed("source", "who says so: author, year, journal; or 'choice of this project'");
    String locator = needed("locator", "where in the source: page, table, doi; or 'none'");
    Optional<Confidence> confidence = confidence();
    boolean told = findings.list().size() > before || !cells.complete();
    if (told || quantity.isEmpty() || confidence.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new MaterialRow(
            key,
            quantity.get(),
            value,
            spread,
            cells.text("n"),
            cells.text("method"),
            source,
            locator,
            confidence.get(),
            cells.text("note"),
            cells.row()));
  }

  private Optional<Quantity> quantity(String key) {
    String slot = MaterialRow.slot(key);
    Optional<Quantity> quantity = quantities.of(slot);
    boolean variantNamed = key.equals(slot) || key.matches("[^@]+@[a-z0-9_]+");
    if (quantity.isEmpty() || !variantNamed) {
      error(
          "key",
          "'" + key + "'",
          "a key that the model reads, with @ and a name in small letters for a variant",
          quantity.isEmpty() ? quantities.hint(slot) : "");
    }
    return quantity;
  }

  private void checkValue(Quantity q, double value) {
    if (!cells.text("unit").equals(q.unit())) {
      error(
          "unit",
          "'" + cells.text("unit") + "'",
          "'" + q.unit() + "', the unit of " + q.key(),
          "Give the number in that unit.");
    }
    if (!Double.isNaN(value) && !q.allows(value)) {
      findings.error(
          cells.place("value"),
          (cells.text("value") + " " + cells.text("unit")).strip(),
          "a number from %s to %s %s".formatted(q.lowest(), q.highest(), q.unit()),
          "Is it in another unit?");
    }
  }

  private Spread spread(double value) {
    Optional<Distribution> kind = Distribution.of(cells.text("distribution"));
    if (kind.isEmpty()) {
      String word = cells.text("distribution");
      findings.error(
          cells.place("distribution"),
          "'" + word + "'",
          "one of " + String.join(", ", Distribution.keys()),
          meant(word, Distribution.keys()));
      return Spread.NONE;
    }
    double sd = cells.number("sd", kind.get().needsDeviation());
    double low = cells.number("low", kind.get().needsRange());
    double high = cells.number("high", kind.get().needsRange());
    checkSpread(kind.get(), value, sd, low, high);
    return new Spread(kind.get(), sd, low, high);
  }

  private void checkSpread(Distribution kind, double value, double sd, double low, double high) {
    if (sd <= 0) {
      findings.error(cells.place("sd"), cells.text("sd"), "a standard deviation above 0", "");
    }
    if (value < low || value > high || low >= high) {
      findings.error(
          cells.place("low"),
          "%s … %s about the value %s".formatted(low, high, value),
          "low below high, and the value between them",
          "");
    }
    if (kind == Distribution.LOGNORMAL && value <= 0) {
      findings.error(cells.place("value"), "" + value, "above 0 where it spreads log-normal", "");
    }
  }

  private String needed(String column, String expected) {
    if (cells.text(column).isEmpty()) {
      error(
          column,
          "nothing",
          expected,
          "A number without a source is not used; say where it comes from.");
    }
    return cells.text(column);
  }

  private Optional<Confidence> confidence() {
    String word = cells.text("confidence");
    Optional<Confidence> confidence = Confidence.of(word);
    if (confidence.isEmpty()) {
      error(
          "confidence",
          word.isEmpty() ? "nothing" : "'" + word + "'",
          "one of " + String.join(", ", Confidence.keys()),
          meant(word, Confidence.keys()));
    }
    return confidence;
  }

  /** The known words stand in what was expected already. */
  private static String meant(String word, List<String> known) {
    return NearestName.of(word, known).map(name -> "Did you mean '" + name + "'?").orElse("");
  }

  /** A column that the whole table lacks has been told of once, at its head. */
  private void error(String column, String found, String expected, String remedy) {
    if (!cells.lacks(column)) {
      findings.error(cells.place(column), found, expected, remedy);
    }
  }
}
