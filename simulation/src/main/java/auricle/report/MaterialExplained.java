package auricle.report;

import auricle.material.MaterialRow;
import auricle.material.MaterialTables;
import java.util.List;

/** Everything that is known about one row of the material tables, as plain text. */
public final class MaterialExplained {
  private static final int WIDTH = 96;

  private final MaterialTables tables;
  private final StringBuilder text = new StringBuilder();

  private MaterialExplained(MaterialTables tables) {
    this.tables = tables;
  }

  /**
   * The text.
   *
   * @param key what was asked for
   * @param row its row, or that of the whole ear which it follows
   */
  public static String write(MaterialTables tables, String key, MaterialRow row) {
    return new MaterialExplained(tables).all(key, row);
  }

  private String all(String key, MaterialRow row) {
    if (!row.key().equals(key)) {
      text.append(key).append(" has no row of its own; it follows the whole ear:\n\n");
    }
    text.append(row.key()).append(" = ").append(MaterialWords.amount(row)).append('\n');
    line("is", row.quantity().meaning());
    line("used by", row.quantity().usedBy());
    line("spread", MaterialWords.wholeSpread(row));
    line("source", row.source());
    line("where", row.locator());
    line("confidence", row.confidence().key() + ": " + row.confidence().words());
    line("method", row.method());
    line("measured on", row.count().isEmpty() ? "" : row.count() + " (n)");
    line("why", row.note());
    line("stands in", row.place());
    tables.shadowed(row.key()).forEach(r -> line("in place of", other(r)));
    more("other values", tables.variants(row.slot()).stream().filter(r -> r != row).toList());
    more("regions of their own", tables.regions(row.slot()));
    choose(row);
    return text.toString();
  }

  private void more(String label, List<MaterialRow> rows) {
    for (int i = 0; i < rows.size(); i++) {
      line(i == 0 ? label : " ", rows.get(i).key() + " = " + other(rows.get(i)));
    }
  }

  private static String other(MaterialRow row) {
    return "%s (%s, %s)".formatted(MaterialWords.amount(row), row.confidence().key(), row.source());
  }

  private void choose(MaterialRow row) {
    List<String> variants =
        tables.variants(row.slot()).stream()
            .map(MaterialRow::variant)
            .filter(v -> !v.isEmpty())
            .toList();
    if (!variants.isEmpty()) {
      line("to choose", "in a scenario, tissue: {%s: %s}".formatted(row.slot(), variants.get(0)));
    }
    line("to change", "in a scenario, tissue: {%s: NUMBER}".formatted(row.slot()));
  }

  /** A label and words, broken at spaces. */
  private void line(String label, String words) {
    StringBuilder line = new StringBuilder("  %-22s".formatted(label));
    int start = line.length();
    for (String word : words.isEmpty() ? new String[0] : words.split(" ", -1)) {
      if (line.length() > start && line.length() + word.length() > WIDTH) {
        text.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(" ".repeat(start));
      }
      line.append(word).append(' ');
    }
    if (!words.isEmpty()) {
      text.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
