package auricle.report;

import auricle.material.MaterialRow;
import auricle.material.MaterialTables;
import java.util.List;

/** The material tables as plain text. */
public final class MaterialList {
  private static final int WIDEST_SOURCE = 60;

  private MaterialList() {}

  /**
   * One line a row.
   *
   * @param names tables to show
   */
  public static String write(MaterialTables tables, List<String> names) {
    StringBuilder text = new StringBuilder();
    for (String name : names) {
      text.append(name).append('\n').append(table(tables, name)).append('\n');
    }
    return text.toString();
  }

  private static String table(MaterialTables tables, String name) {
    TextTable table = new TextTable("lrllll");
    table.row("row", "value", "unit", "spread", "confidence", "source");
    for (MaterialRow row : tables.rows(name)) {
      table.row(
          row.key(),
          MaterialWords.number(row.value()),
          row.quantity().unit(),
          MaterialWords.spread(row),
          row.confidence().key(),
          cut(row.source()) + (tables.shadowed(row.key()).isEmpty() ? "" : " [in place of ours]"));
    }
    return table.text();
  }

  private static String cut(String source) {
    return source.length() <= WIDEST_SOURCE
        ? source
        : source.substring(0, WIDEST_SOURCE - 1).stripTrailing() + "…";
  }
}
